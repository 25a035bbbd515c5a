import { fixedText } from '@larderwright/calc/quantities';

/**
 * Ovens learnt from finished cooks, kept on this device beside the batches: a plain list under one key, newest first.
 * A plan copies the figures of the record it uses, so that losing the list changes no batch.
 */
const KEY = 'larderwright.ovens';
const MOST = 40;

export interface KeptOven {
  readonly name: string;
  /** ISO date-time of the cook it was learnt from. */
  readonly at: string;
  readonly filmFactor: number;
  readonly heatingFactor: number;
  readonly mediumShiftC: number;
}

const isFigure = (value: unknown) => typeof value === 'number' && Number.isFinite(value);

function isKept(value: unknown): value is KeptOven {
  if (typeof value !== 'object' || value === null) return false;
  const { name, at, filmFactor, heatingFactor, mediumShiftC } = value as Record<string, unknown>;
  return (
    typeof name === 'string' &&
    typeof at === 'string' &&
    [filmFactor, heatingFactor, mediumShiftC].every(isFigure)
  );
}

/** All kept ovens. None where storage is blocked or damaged. */
export function keptOvens(): KeptOven[] {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(KEY) ?? '[]');
    return Array.isArray(read) ? read.filter(isKept) : [];
  } catch {
    return [];
  }
}

/** Keeps these ovens and no others. False where storage takes nothing. */
export function keepOvens(ovens: readonly KeptOven[]): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(ovens.slice(0, MOST)));
    return true;
  } catch {
    return false;
  }
}

/**
 * Keeps ovens of another device beside those of this one. One whose name is taken, and whose figures differ, gets the
 * next free name, so that nothing here is overwritten.
 * @returns how many were kept; the rest found no room
 */
export function addOvens(incoming: readonly KeptOven[]): number {
  const here = keptOvens();
  const names = new Set(here.map(({ name }) => name));
  const room = incoming.slice(0, Math.max(0, MOST - here.length)).map((oven) => {
    const name = freeName(oven.name, names);
    names.add(name);
    return { ...oven, name };
  });
  try {
    localStorage.setItem(KEY, JSON.stringify([...here, ...room]));
    return room.length;
  } catch {
    return 0;
  }
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  for (let number = 2; ; number++) {
    const next = `${name.slice(0, 70)} (${number})`;
    if (!taken.has(next)) return next;
  }
}

/** Keeps an oven in place of one of the same name. False where storage takes nothing. */
export function keepOven(oven: KeptOven): boolean {
  return keepOvens([oven, ...keptOvens().filter(({ name }) => name !== oven.name)]);
}

/** A factor or difference as it is written into a plan. */
export const figureText = (value: number) => String(Number(fixedText(value, 2)));

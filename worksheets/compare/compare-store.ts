import { type Batch, readBatch } from '@larderwright/calc/batch';
import { atom } from 'nanostores';
import type { Shelved } from '../state/database.ts';
import { rawBatch } from '../state/storage.ts';
import type { CompareFigures } from './figures-of.ts';

/** Batches of a family whose records are read for its trend: the latest ones. */
export const MOST_IN_TREND = 60;
/** Batches side by side: more columns cannot be read. */
export const MOST_SIDE = 6;

/** Figures of records, read once and again when a record was written since. */
const known = new Map<string, { readonly rev: number; readonly figures: CompareFigures | null }>();

/** A series that is looked at without being kept: the invented one. */
export const $series = atom<readonly Batch[] | null>(null);

/** What is being read now. */
export const $reading = atom<{ readonly done: number; readonly all: number } | null>(null);

let compute: Promise<(batch: Batch) => Promise<CompareFigures>> | null = null;
const load = () => {
  compute ??= import('./figures-of.ts').then(({ loadFigures }) => loadFigures());
  return compute;
};

const breath = () => new Promise<void>((resolve) => setTimeout(resolve));

/** Figures of one record; null where it cannot be read. */
async function figuresOf({ id, rev }: Pick<Shelved, 'id' | 'rev'>): Promise<CompareFigures | null> {
  const kept = known.get(id);
  if (kept?.rev === rev) return kept.figures;
  const of = await load();
  const read = readBatch(await rawBatch(id));
  const figures = read.ok ? await of(read.batch) : null;
  known.set(id, { rev, figures });
  return figures;
}

/**
 * Figures of these batches in their order, one record at a time, so that the page stays awake.
 *
 * @returns null when the signal was given meanwhile
 */
export async function readFigures(
  batches: readonly Pick<Shelved, 'id' | 'rev'>[],
  signal: AbortSignal,
): Promise<(CompareFigures | null)[] | null> {
  const figures: (CompareFigures | null)[] = [];
  for (const batch of batches) {
    if (signal.aborted) return null;
    const isNew = known.get(batch.id)?.rev !== batch.rev;
    figures.push(await figuresOf(batch));
    $reading.set({ done: figures.length, all: batches.length });
    if (isNew) await breath();
  }
  $reading.set(null);
  return signal.aborted ? null : figures;
}

/** Lays an invented series on the table. Nothing of it is kept. */
export async function openSeries(address: string): Promise<void> {
  const answer = await fetch(address);
  const raw: unknown = await answer.json();
  const of = await load();
  const batches: Batch[] = [];
  for (const each of Array.isArray(raw) ? raw : []) {
    const read = readBatch(each);
    if (!read.ok) continue;
    known.set(read.batch.id, { rev: 0, figures: await of(read.batch) });
    batches.push(read.batch);
  }
  $series.set(batches);
}

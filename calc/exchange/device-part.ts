import * as v from 'valibot';
import { kitchenSchema, type ReadKitchen, readKitchen } from '../kitchen/index.ts';

/** Most rows of one kind that the part may hold. */
const MOST_DEVICE_ROWS = 200;
const MOST_NAME = 80;

const text = (most: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(most));
const factor = v.pipe(v.number(), v.minValue(0.001), v.maxValue(1_000));

/**
 * An oven learnt from a finished cook, against the shipped figures: how many times as well air and water give their
 * heat, how many times as strongly the oven heats a pan, and by how many °C it is hotter than it shows.
 */
const ovenSchema = v.strictObject({
  name: text(MOST_NAME),
  /** ISO date-time of the cook it was learnt from. */
  at: text(40),
  filmFactor: factor,
  heatingFactor: factor,
  mediumShiftC: v.pipe(v.number(), v.minValue(-200), v.maxValue(200)),
});
/** A batch that was put out of the way, and when. */
const archivedSchema = v.strictObject({ id: text(200), at: text(40) });
const MOST_ARCHIVED = 5_000;

export type FileOven = v.InferOutput<typeof ovenSchema>;

/**
 * What lies on a device beside its batches and goes with them into a file of all there is. Every kind of thing is one
 * optional key; a file without the part, or without a key of it, is whole.
 */
export const devicePartSchema = v.strictObject({
  ovens: v.exactOptional(v.pipe(v.array(ovenSchema), v.maxLength(MOST_DEVICE_ROWS))),
  kitchen: v.exactOptional(kitchenSchema),
  archived: v.exactOptional(v.pipe(v.array(archivedSchema), v.maxLength(MOST_ARCHIVED))),
});
export type DevicePart = v.InferOutput<typeof devicePartSchema>;

/** The part as it was read: what is sound of it, and what is not. */
export interface ReadDevicePart {
  readonly ovens: readonly FileOven[];
  /** The settings of the kitchen; null: the file has none. */
  readonly kitchen: ReadKitchen | null;
  /** When a batch was put out of the way, by its id. */
  readonly archived: ReadonlyMap<string, string>;
  /** Rows that are damaged, or more than a part may hold. */
  readonly unreadable: number;
  /** Keys this version does not know: a newer one wrote them. */
  readonly unknown: number;
}

const KNOWN: readonly string[] = Object.keys(devicePartSchema.entries);

/** The sound rows of a list of unknown origin, and how many are not. */
function soundRows<T>(
  raw: unknown,
  row: v.GenericSchema<unknown, T>,
  most: number,
): { rows: T[]; unreadable: number } {
  if (raw === undefined) return { rows: [], unreadable: 0 };
  if (!Array.isArray(raw)) return { rows: [], unreadable: 1 };
  const rows = raw.slice(0, most).flatMap((each: unknown) => {
    const read = v.safeParse(row, each);
    return read.success ? [read.output] : [];
  });
  return { rows, unreadable: raw.length - rows.length };
}

/** Reads the part of a file row by row. What is damaged is counted and takes nothing else with it. */
export function readDevicePart(raw: unknown): ReadDevicePart {
  const nothing = {
    ovens: [],
    kitchen: null,
    archived: new Map<string, string>(),
    unreadable: 0,
    unknown: 0,
  };
  if (raw === undefined) return nothing;
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return { ...nothing, unreadable: 1 };
  const part = raw as Record<string, unknown>;
  const ovens = soundRows(part.ovens, ovenSchema, MOST_DEVICE_ROWS);
  const archived = soundRows(part.archived, archivedSchema, MOST_ARCHIVED);
  return {
    ovens: ovens.rows,
    kitchen: part.kitchen === undefined ? null : readKitchen(part.kitchen),
    archived: new Map(archived.rows.map(({ id, at }) => [id, at])),
    unreadable: ovens.unreadable + archived.unreadable,
    unknown: Object.keys(part).filter((key) => !KNOWN.includes(key)).length,
  };
}

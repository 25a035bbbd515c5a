import * as v from 'valibot';

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
export type FileOven = v.InferOutput<typeof ovenSchema>;

/**
 * What lies on a device beside its batches and goes with them into a file of all there is. Every kind of thing is one
 * optional key; a file without the part, or without a key of it, is whole.
 */
export const devicePartSchema = v.strictObject({
  ovens: v.exactOptional(v.pipe(v.array(ovenSchema), v.maxLength(MOST_DEVICE_ROWS))),
});
export type DevicePart = v.InferOutput<typeof devicePartSchema>;

/** The part as it was read: what is sound of it, and what is not. */
export interface ReadDevicePart {
  readonly ovens: readonly FileOven[];
  /** Rows that are damaged, or more than a part may hold. */
  readonly unreadable: number;
  /** Keys this version does not know: a newer one wrote them. */
  readonly unknown: number;
}

const KNOWN: readonly string[] = Object.keys(devicePartSchema.entries);

/** Reads the part of a file row by row. What is damaged is counted and takes nothing else with it. */
export function readDevicePart(raw: unknown): ReadDevicePart {
  if (raw === undefined) return { ovens: [], unreadable: 0, unknown: 0 };
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return { ovens: [], unreadable: 1, unknown: 0 };
  const part = raw as Record<string, unknown>;
  const unknown = Object.keys(part).filter((key) => !KNOWN.includes(key)).length;
  if (part.ovens === undefined) return { ovens: [], unreadable: 0, unknown };
  if (!Array.isArray(part.ovens)) return { ovens: [], unreadable: 1, unknown };
  const rows: readonly unknown[] = part.ovens.slice(0, MOST_DEVICE_ROWS);
  const ovens = rows.flatMap((row) => {
    const read = v.safeParse(ovenSchema, row);
    return read.success ? [read.output] : [];
  });
  return { ovens, unreadable: part.ovens.length - ovens.length, unknown };
}

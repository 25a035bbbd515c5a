import { fromBase, toBase } from './convert.ts';
import type { Unit } from './entry.ts';
import { issue, ok, type Result } from './result.ts';
import { fixedText, plainText } from './round.ts';
import { type QuantityKind, UNITS, unitLabel } from './units.ts';

/** Limits in base units, both included. */
export interface Range {
  readonly min?: number;
  readonly max?: number;
}

/**
 * What cannot be in a kitchen whatever the field: wide walls against slips of the keyboard, in base units.
 * A field adds its own narrower range. Common practice, no source; absolute zero is not the wall because
 * no kitchen is near it.
 */
export const PHYSICAL_RANGES: Readonly<Record<QuantityKind, Range>> = {
  mass: { min: 0, max: 10_000_000 },
  length: { min: 0, max: 100_000 },
  volume: { min: 0, max: 10_000_000 },
  temperature: { min: -200, max: 400 },
  'temperature-difference': { min: -200, max: 200 },
  pressure: { min: 0, max: 10_000 },
  time: { min: 0, max: 5_256_000 },
  fraction: { min: 0, max: 1 },
  ppm: { min: 0, max: 1_000_000 },
  density: { min: 0, max: 20 },
  count: { min: 0, max: 1_000_000 },
  money: { min: 0, max: 1_000_000_000 },
  ratio: { min: 0, max: 1000 },
};

/** Kinds in which a number below zero has a meaning. */
const SIGNED: readonly QuantityKind[] = ['temperature', 'temperature-difference'];

/** A limit written in the user's unit, without a tail of digits. */
function limitText(base: number, unit: Unit): string {
  const value = fromBase(base, unit);
  const text = plainText(value);
  return text.length > 8 ? fixedText(value, 1) : text;
}

/**
 * Check a value against a range.
 * @param value in base units
 * @param range in base units; falls back to the physical range of the unit's kind
 * @param unit the unit the person sees, for the issue's numbers
 * @returns the value, or `negative`, `below-range`, `above-range`
 */
export function withinRange(value: number, unit: Unit, range?: Range): Result<number> {
  const { kind } = UNITS[unit];
  const { min, max } = { ...PHYSICAL_RANGES[kind], ...range };
  const label = unitLabel(unit);
  if (value < 0 && !SIGNED.includes(kind) && (min ?? 0) >= 0) return issue('negative', { unit: label });
  if (min !== undefined && !(value >= min))
    return issue('below-range', { limit: limitText(min, unit), unit: label });
  if (max !== undefined && !(value <= max))
    return issue('above-range', { limit: limitText(max, unit), unit: label });
  return ok(value);
}

/**
 * A range written in one of its kind's units, for `withinRange` and the parse options.
 * @example rangeIn('cm', 1, 60) // { min: 10, max: 600 } in mm
 */
export function rangeIn(unit: Unit, min: number, max: number): Range {
  return { min: toBase(min, unit), max: toBase(max, unit) };
}

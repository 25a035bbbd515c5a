import {
  type Entry,
  formatQuantity,
  type QuantityKind,
  readEntry,
  roundTo,
  type Unit,
  unitLabel,
} from '@larderwright/calc/quantities';
import type { Filled } from '../sheet-model.ts';

/**
 * A number field as it prints: in the unit of the sheet, flagged entered or default. What cannot be read
 * prints as it was typed, in quotes and with a question mark, so that nothing typed is lost on paper either.
 */
export function filled(kind: QuantityKind, entry: Entry, unit: Unit, withUnit = true): Filled | null {
  const read = readEntry(kind, entry);
  if (read.state === 'blank') return null;
  const flag = entry.origin === 'entered' ? 'E' : 'D';
  if (read.state === 'bad') return { text: `"${entry.text.trim()}" ?`, flag };
  // In the unit it was typed in every digit stands; converted, only as many as are worth reading.
  const rounding = read.unit === unit ? {} : { decimals: decimalsOf(kind, read.value, unit) };
  return { text: formatQuantity(kind, read.value, { unit, withUnit, ...rounding }), flag };
}

/** Enough digits to weigh and read by, no more. Exact counts and temperatures keep what was typed. */
function decimalsOf(kind: QuantityKind, value: number, unit: Unit): number {
  if (kind === 'mass') return unit === 'g' ? gramDecimals(value) : 2;
  if (kind === 'count') return 0;
  if (kind === 'fraction' || kind === 'density' || kind === 'pressure') return 2;
  return Number.isInteger(value) ? 0 : 1;
}

/** Hundredths below 10 g, tenths above, and none where they would be zeros. */
export function gramDecimals(massG: number): number {
  const tenths = Math.round(Math.abs(massG) * 10) / 10;
  if (Math.abs(massG) < 10) return Math.round(Math.abs(massG) * 100) % 10 === 0 ? 1 : 2;
  return Number.isInteger(tenths) ? 0 : 1;
}

/** A mass worked out here, without its unit where the column says g. */
export function worked(massG: number | null, withUnit = false): Filled | null {
  if (massG === null) return null;
  return { text: formatQuantity('mass', massG, { decimals: gramDecimals(massG), withUnit }), flag: 'W' };
}

/** A sum of printed weights, with every digit they have. */
export function summed(massG: number | null, withUnit = false): Filled | null {
  if (massG === null) return null;
  return { text: formatQuantity('mass', roundTo(massG, 2), { withUnit }), flag: 'W' };
}

/** Words of a person, or null for a box to write in. */
export function words(text: string): string | null {
  return text.trim() === '' ? null : text.trim();
}

/** A share in per cent. */
export function percent(fraction: number | null, decimals = 2): string | null {
  return fraction === null ? null : formatQuantity('fraction', fraction, { decimals, withUnit: true });
}

/** A height above the sea as it was typed: it lies beyond what a length in a kitchen may be. */
export function heightOf({ text, unit, origin }: Entry): Filled | null {
  if (text.trim() === '') return null;
  return { text: `${text.trim()} ${unitLabel(unit)}`, flag: origin === 'entered' ? 'E' : 'D' };
}

import type { Entry } from './entry.ts';
import { type ParseOptions, parseQuantity, type Quantity } from './parse-quantity.ts';
import type { Issue } from './result.ts';
import type { QuantityKind } from './units.ts';

/** A field read. Blank is unknown, never zero; a bad text is neither. */
export type Reading =
  | { readonly state: 'blank' }
  | ({ readonly state: 'ok' } & Quantity)
  | { readonly state: 'bad'; readonly issue: Issue };

/**
 * Read an entry as a quantity of one kind.
 * @returns `blank`, `ok` with the value in base units, or `bad` with the reason
 * @example readEntry('mass', enteredEntry('2 lb', 'g')) // { state: 'ok', value: 907.18474, unit: 'lb', … }
 */
export function readEntry(kind: QuantityKind, entry: Entry, options?: ParseOptions): Reading {
  const parsed = parseQuantity(kind, entry.text, entry.unit, options);
  if (parsed.ok) return { state: 'ok', ...parsed.value };
  return parsed.issue.code === 'empty' ? { state: 'blank' } : { state: 'bad', issue: parsed.issue };
}

/** The value of an entry in base units, or null when it is blank or cannot be read. */
export function entryValue(kind: QuantityKind, entry: Entry, options?: ParseOptions): number | null {
  const reading = readEntry(kind, entry, options);
  return reading.state === 'ok' ? reading.value : null;
}

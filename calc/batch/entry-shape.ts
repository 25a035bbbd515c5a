import type { Entry } from '../quantities/index.ts';

export type Branch = Readonly<Record<string, unknown>>;

/** An object of the record that is no list. */
export const isBranch = (value: unknown): value is Branch =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A number field: changed, compared and kept as one thing. */
export const isEntry = (value: unknown): value is Entry =>
  isBranch(value) && typeof value.text === 'string' && 'unit' in value && 'origin' in value;

/** What a row of a list is known by: its id, or its role. Null: the list has no rows of its own. */
export function rowKey(row: unknown): string | null {
  if (!isBranch(row)) return null;
  const key = row.id ?? row.role ?? row.issuedAt;
  return typeof key === 'string' ? key : null;
}

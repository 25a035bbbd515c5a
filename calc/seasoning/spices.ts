import type { Mark, SourceId } from '../sources/index.ts';
import type { Spice } from './spice.ts';
import { SPICES } from './spice-table.ts';

/** How every figure of the table is known. */
export const SPICE_SOURCE: SourceId = 'trade-spice-doses';
export const SPICE_MARK: Mark = 'common-practice';

const BY_ID = new Map(SPICES.map((row) => [row.id, row]));

/** A row of the dose table, or undefined. */
export function spiceOf(id: string | null): Spice | undefined {
  return id === null ? undefined : BY_ID.get(id);
}

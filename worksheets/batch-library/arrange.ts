import { searchSummaries } from '@larderwright/calc/batch';
import type { Shelved } from '../state/database.ts';

export type Order = 'changed' | 'day' | 'name' | 'number' | 'state';
/** Which of the batches are shown. */
export type Which = 'in-use' | 'archived' | 'all';

/** What calls for a hand comes first. */
const STATE_ORDER: readonly Shelved['state'][] = ['held', 'in-process', 'planned', 'released', 'discarded'];

const byText = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
const newest = (a: string, b: string) => (a < b ? 1 : a > b ? -1 : 0);

const COMPARE: Readonly<Record<Order, (a: Shelved, b: Shelved) => number>> = {
  changed: (a, b) => Date.parse(b.updatedAt) - Date.parse(a.updatedAt),
  day: (a, b) => newest(a.day, b.day),
  name: (a, b) => byText.compare(a.name, b.name),
  number: (a, b) => byText.compare(b.batchNo, a.batchNo),
  state: (a, b) => STATE_ORDER.indexOf(a.state) - STATE_ORDER.indexOf(b.state),
};

/** The batches that answer a search, in the order asked for; the last changed first among equals. */
export function arranged(
  batches: readonly Shelved[],
  { text, which, order }: { text: string; which: Which; order: Order },
): Shelved[] {
  const wanted = batches.filter(
    ({ archivedAt }) => which === 'all' || (archivedAt !== null) === (which === 'archived'),
  );
  return searchSummaries(wanted, text).toSorted((a, b) => COMPARE[order](a, b) || COMPARE.changed(a, b));
}

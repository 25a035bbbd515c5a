import { atom } from 'nanostores';
import { getAt, setAt } from './paths.ts';
import { $batch, edit } from './store.ts';

/** A row of a list in the batch: anything that has an id. */
interface Row {
  id: string;
}

/** The row taken out last, kept until the next removal so that it can be put back whole. */
export interface RemovedRow {
  /** Path of the list it stood in. */
  list: string;
  index: number;
  row: Row;
  /** What to call it: "Pork liver". */
  label: string;
  batchId: string;
}
export const $removed = atom<RemovedRow | null>(null);

function rowsAt(root: unknown, list: string): readonly Row[] {
  const rows = getAt(root, list);
  if (!Array.isArray(rows)) throw new Error(`${list} is not a list`);
  return rows;
}

/** Adds a row at the end of a list, or at `index`. */
export function addRow<Added extends Row>(list: string, row: Added, index?: number): void {
  edit((batch) => {
    const rows = rowsAt(batch, list).slice();
    rows.splice(index ?? rows.length, 0, row);
    return setAt(batch, list, rows);
  });
}

/** Takes a row out. It stays in `$removed` for `putBack`. A row already gone is no error. */
export function removeRow(list: string, id: string, label: string): void {
  const batch = $batch.get();
  const rows = rowsAt(batch, list);
  const index = rows.findIndex((row) => row.id === id);
  const row = rows[index];
  if (!row) return;
  edit((before) =>
    setAt(
      before,
      list,
      rows.filter((other) => other.id !== id),
    ),
  );
  $removed.set({ list, index, row, label, batchId: $batch.get().id });
}

/** Puts the removed row back where it stood. */
export function putBack(): void {
  const removed = $removed.get();
  if (!removed || removed.batchId !== $batch.get().id) return;
  // The batch may have been set back meanwhile, and the row with it: one row never stands twice.
  const isBack = rowsAt($batch.get(), removed.list).some(({ id }) => id === removed.row.id);
  if (!isBack) addRow(removed.list, removed.row, removed.index);
  $removed.set(null);
}

/** Moves a row by so many places; at either end it stays where it is. */
export function moveRow(list: string, id: string, by: -1 | 1): void {
  edit((batch) => {
    const rows = rowsAt(batch, list).slice();
    const from = rows.findIndex((row) => row.id === id);
    const to = from + by;
    const row = rows[from];
    if (!row || to < 0 || to >= rows.length) return batch;
    rows.splice(from, 1);
    rows.splice(to, 0, row);
    return setAt(batch, list, rows);
  });
}

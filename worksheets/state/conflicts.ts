import type { Batch, MergeConflict } from '@larderwright/calc/batch';
import { atom } from 'nanostores';
import { getAt, hasPath, setAt } from './paths.ts';
import { $batch, edit } from './store.ts';

/** A field with two values: the one on screen and the one another tab had written. */
export interface Conflict extends MergeConflict {
  readonly batchId: string;
}

/** Fields that two tabs changed differently, until a person has looked at each. */
export const $conflicts = atom<readonly Conflict[]>([]);

export function tellConflicts(conflicts: readonly MergeConflict[]): void {
  if (conflicts.length === 0) return;
  const batchId = $batch.get().id;
  const told = $conflicts.get().filter(({ path }) => !conflicts.some((fresh) => fresh.path === path));
  $conflicts.set([...told, ...conflicts.map((conflict) => ({ ...conflict, batchId }))]);
}

/** Whether a field still holds another value than the one that was told. A choice made in another tab settles it. */
export function isOpen({ path, theirs, batchId }: Conflict, batch: Batch): boolean {
  if (batch.id !== batchId) return false;
  const here = hasPath(batch, path) ? getAt(batch, path) : undefined;
  return JSON.stringify(here) !== JSON.stringify(theirs);
}

const without = (conflict: Conflict) => $conflicts.set($conflicts.get().filter((each) => each !== conflict));

/** The value on screen is right. */
export function keepOurs(conflict: Conflict): void {
  without(conflict);
}

/** The other tab's value is right: it takes the field. */
export function takeTheirs(conflict: Conflict): void {
  without(conflict);
  const { path, theirs, batchId } = conflict;
  if ($batch.get().id !== batchId) return;
  edit((batch) => {
    if (theirs !== undefined) return hasPath(batch, path) ? setAt(batch, path, theirs) : batch;
    // The other tab had taken the row away.
    const list = path.slice(0, path.lastIndexOf('.'));
    const id = path.slice(path.lastIndexOf('.') + 1);
    const rows = hasPath(batch, list) ? getAt(batch, list) : null;
    if (!Array.isArray(rows)) return batch;
    const left = rows.filter((row: { id?: string; role?: string }) => (row.id ?? row.role) !== id);
    return setAt(batch, list, left);
  });
}

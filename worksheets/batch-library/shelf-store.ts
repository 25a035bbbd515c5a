import { nextBatch, readBatch } from '@larderwright/calc/batch';
import { atom } from 'nanostores';
import * as say from '#words/batch-library/shelf-store.ts';
import { nextNumber } from '../state/batch-numbers.ts';
import { newRecordId, nowIso, zoneHere } from '../state/clock.ts';
import type { Shelved } from '../state/database.ts';
import { hearOtherTabs } from '../state/other-tabs.ts';
import {
  archiveBatch,
  deleteBatch,
  emptyOldBin,
  openShelf,
  putBackBatch,
  type Shelf,
} from '../state/shelf.ts';
import { putOnBench, rawBatch, saveBatch } from '../state/storage.ts';
import { $life, type Notice } from '../state/store.ts';
import { troubleOf } from '../state/trouble.ts';

/** What lies on this device, as the page knows it. */
export type ShelfState =
  | { readonly state: 'looking' }
  | { readonly state: 'open'; readonly shelf: Shelf }
  | { readonly state: 'closed'; readonly notice: Notice };

export const $shelf = atom<ShelfState>({ state: 'looking' });

/** What was done last, so that it can be undone. */
export interface Done {
  readonly what: 'deleted' | 'archived' | 'taken-back';
  readonly id: string;
  readonly name: string;
}
export const $done = atom<Done | null>(null);

/** Looks again at what is kept. */
export async function lookAgain(): Promise<void> {
  try {
    $shelf.set({ state: 'open', shelf: await openShelf() });
  } catch (error) {
    $shelf.set({ state: 'closed', notice: troubleOf(error) });
  }
}

/** Another tab that types tells of every write: one look serves a burst of them. */
const WAIT_MS = 400;

/** Shows what is kept, follows other tabs, and empties what has lain in the bin too long. Returns the way to stop. */
export function followShelf(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  // No batch is on its way to this page: its fields open at once.
  $life.set('blank');
  void emptyOldBin(Date.now())
    .catch(() => {})
    .then(lookAgain);
  const stop = hearOtherTabs(() => {
    clearTimeout(timer);
    timer = setTimeout(lookAgain, WAIT_MS);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}

/** What to call a batch in a sentence. */
export const nameOf = ({ name, batchNo }: Pick<Shelved, 'name' | 'batchNo'>): string =>
  [name || say.unnamedBatch, batchNo].filter(Boolean).join(', ');

export async function remove(batch: Shelved): Promise<void> {
  await deleteBatch(batch.id);
  $done.set({ what: 'deleted', id: batch.id, name: nameOf(batch) });
  await lookAgain();
}

export async function archive(batch: Shelved): Promise<void> {
  const putAway = batch.archivedAt === null;
  await archiveBatch(batch.id, putAway ? nowIso() : null);
  $done.set({ what: putAway ? 'archived' : 'taken-back', id: batch.id, name: nameOf(batch) });
  await lookAgain();
}

/** Undoes what was done last. */
export async function undoDone(): Promise<void> {
  const done = $done.get();
  if (!done) return;
  $done.set(null);
  if (done.what === 'deleted') await putBackBatch(done.id);
  else await archiveBatch(done.id, done.what === 'archived' ? null : nowIso());
  await lookAgain();
}

export async function putBack(id: string): Promise<void> {
  await putBackBatch(id);
  $done.set(null);
  await lookAgain();
}

/**
 * Begins the next batch of a product and lays it on the bench.
 *
 * @returns false when the record cannot be read
 */
export async function beginNext(id: string): Promise<boolean> {
  const read = readBatch(await rawBatch(id));
  if (!read.ok) return false;
  const start = { id: newRecordId(), at: nowIso(), zone: zoneHere(), batchNo: await nextNumber() };
  await saveBatch(nextBatch(read.batch, start));
  await putOnBench(start.id);
  return true;
}

import type { Batch } from '@larderwright/calc/batch';
import { atom } from 'nanostores';
import * as say from '#words/readers-copy/copy.ts';
import { newRecordId } from '../state/clock.ts';
import { $batch, $life, withSlices } from '../state/store.ts';

/*
 * A reader's copy is the batch of a share link, read from the part of the address that no server gets. It lives in the
 * store of this page alone: nothing here starts the autosave, so the reader's own batches are never touched.
 */

export type Copy =
  | { state: 'opening' }
  | { state: 'open' }
  | { state: 'refused'; words: string }
  | { state: 'taken'; beside: boolean };

export const $copy = atom<Copy>({ state: 'opening' });

let original: Batch | null = null;
let begun = false;

/** Opens the batch of the address, and any other that is put there later. */
export async function openCopy(): Promise<void> {
  if (!begun) addEventListener('hashchange', () => void openCopy());
  begun = true;
  try {
    const { readLink } = await import('./read-link.ts');
    const read = readLink(location.hash.slice(1));
    if ('words' in read) {
      original = null;
      $life.set('blank');
      $copy.set({ state: 'refused', words: read.words });
      return;
    }
    original = read.batch;
    $batch.set(withSlices(read.batch));
    $life.set('open');
    $copy.set({ state: 'open' });
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    $copy.set({ state: 'refused', words: say.readerLinksCouldNotFetched(detail) });
  }
}

/**
 * Lays the copy, as it came, on the bench of this device. Where its id is in use it becomes a batch of its own beside
 * the one that is here.
 *
 * @throws when the device keeps nothing
 */
export async function takeCopy(): Promise<void> {
  if (!original) return;
  const { addRecords, putOnBench, rawBatch } = await import('../state/storage.ts');
  const beside = (await rawBatch(original.id)) !== undefined;
  const batch = beside ? { ...original, id: newRecordId() } : original;
  await addRecords([batch]);
  await putOnBench(batch.id);
  $copy.set({ state: 'taken', beside });
}

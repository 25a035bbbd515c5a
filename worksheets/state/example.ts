import type { Batch } from '@larderwright/calc/batch';
import { $removed } from './rows.ts';
import { $batch, $life, $notice, withSlices } from './store.ts';

/*
 * The example mode: a technique page shows its worksheets on an invented batch of its own. That batch lives in
 * the page's store alone. Nothing here starts the autosave or asks what lies on the bench, so the reader's own
 * batch is never opened, never written over, and never mixed up with the example.
 */

let original: Batch | null = null;
let opening: Promise<void> | null = null;

async function open(address: string): Promise<void> {
  try {
    const [response, { readBatch }] = await Promise.all([fetch(address), import('./read-record.ts')]);
    const read = response.ok ? readBatch(await response.json()) : null;
    if (!read?.ok) throw new Error(address);
    original = read.batch;
    $notice.set(null);
    $batch.set(withSlices(read.batch));
    $life.set('open');
  } catch {
    // Fields stay closed: what was typed here would belong to no example and to no bench.
    $notice.set({ id: 'example-missing', detail: address });
    opening = null;
  }
}

/** Opens the page's example in the page's store. Every worksheet of the page calls it; one fetch serves all. */
export function openExample(address: string): Promise<void> {
  opening ??= open(address);
  return opening;
}

/** Puts the example back as the page brought it. */
export function putExampleBack(): void {
  if (!original) return;
  $removed.set(null);
  $batch.set(withSlices(original));
}

/**
 * Lays a copy of the example, as it now stands, on the bench of this device: a record of its own under a new id.
 * The page goes on with the example.
 *
 * @throws when the device keeps nothing
 */
export async function takeToBench(): Promise<void> {
  const [{ saveBatch }, { ownCopy }] = await Promise.all([import('./storage.ts'), import('./own-copy.ts')]);
  await saveBatch(ownCopy($batch.get()));
}

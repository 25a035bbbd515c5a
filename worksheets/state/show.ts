import { readBatch } from '@larderwright/calc/batch';
import { setBenchId } from './bench-id.ts';
import { nowIso } from './clock.ts';
import { opened } from './keeper.ts';
import { ownCopy } from './own-copy.ts';
import { markSaved } from './shown.ts';
import { putOnBench, rawWithRev, saveBatch, setAside } from './storage.ts';
import { $batch, $life, $notice, withSlices } from './store.ts';

/*
 * Puts batches on the bench. Fetched when there is one to show: with it come the reader of records and the keeper.
 */

/** Puts a batch that lies on the device on the bench, without saving it again. */
function show(stored: Parameters<typeof withSlices>[0], rev: number): void {
  const batch = withSlices(stored);
  opened(batch, rev);
  markSaved(batch);
  $batch.set(batch);
  $life.set('open');
}

async function openStored(id: string): Promise<boolean> {
  const found = await rawWithRev(id);
  if (found === null) return false;
  const read = readBatch(found.raw);
  if (read.ok) {
    show(read.batch, found.rev);
    setBenchId(id);
    return true;
  }
  if (read.problem === 'newer-version') {
    $notice.set({ id: 'record-newer', detail: String(read.version) });
  } else {
    await setAside(id, nowIso(), found.raw);
    $notice.set({ id: 'record-damaged', detail: read.path });
  }
  return false;
}

/**
 * Opens a demo batch: the copy on this device if there is one, else the original.
 * `fresh` puts the original back in place of the copy.
 */
export async function openDemo(slug: string, demoBase: string, fresh = false): Promise<void> {
  const id = `demo-${slug}`;
  if (!fresh) {
    try {
      if (await openStored(id)) {
        await putOnBench(id);
        return;
      }
    } catch {
      // No storage: the original is still worth showing.
    }
  }
  const response = await fetch(`${demoBase}${encodeURIComponent(slug)}.json`);
  const read = response.ok ? readBatch(await response.json()) : null;
  if (!read?.ok) {
    $notice.set({ id: 'demo-missing', detail: slug });
    return;
  }
  show(read.batch, 0);
  await saveBatch(read.batch);
  const written = await rawWithRev(id);
  opened(withSlices(read.batch), written?.rev ?? 0);
}

/** A copy of the batch on the bench under a new id, for changing a demo without losing it. */
export function keepAsOwn(): void {
  $batch.set(ownCopy($batch.get()));
}

/** Opens a batch of this device. `asked`: the address named it, so it becomes the one of this bench. */
export async function openById(id: string, asked: boolean): Promise<void> {
  const found = await openStored(id);
  if (found && asked) await putOnBench(id);
  if (!found && $notice.get() === null) $notice.set({ id: 'batch-missing', detail: id });
}

import { type Batch, summaryOf } from '@larderwright/calc/batch';
import { STATE_WORDS } from '../words/states.ts';
import { setBenchId } from './bench-id.ts';
import { database, type Shelved } from './database.ts';
import { announce } from './other-tabs.ts';

export { currentId, putOnBench, rawBatch, rawWithRev } from './bench-record.ts';

/** The summary of a record as it is written, one revision on. */
export function shelvedNext(batch: Batch, before: Shelved | undefined): Shelved {
  return {
    ...summaryOf(batch, STATE_WORDS),
    rev: (before?.rev ?? 0) + 1,
    archivedAt: before?.archivedAt ?? null,
  };
}

/**
 * Writes the batch over whatever lies under its id and makes it the current one, in one transaction.
 * Edits go through `keepEdit` (keeper.ts), which never writes over another tab's.
 */
export async function saveBatch(batch: Batch): Promise<void> {
  const db = await database();
  const tx = db.transaction(['batches', 'summaries', 'desk'], 'readwrite');
  const shelved = shelvedNext(batch, await tx.objectStore('summaries').get(batch.id));
  await Promise.all([
    tx.objectStore('batches').put(batch),
    tx.objectStore('summaries').put(shelved),
    tx.objectStore('desk').put(batch.id, 'current'),
    tx.done,
  ]);
  setBenchId(batch.id);
  announce({ id: batch.id, rev: shelved.rev });
}

/** Every record of this device with its id, unread. */
export async function allRecords(): Promise<{ id: string; raw: unknown }[]> {
  const db = await database();
  const tx = db.transaction('batches');
  const [ids, records] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll(), tx.done]);
  return ids.map((id, index) => ({ id, raw: records[index] }));
}

/**
 * Writes batches beside those that are here, all of them or none. The bench stays as it is.
 *
 * @param archived when a batch was put out of the way, by its id
 * @throws when an id is in use: nothing is overwritten
 */
export async function addRecords(
  batches: readonly Batch[],
  archived: ReadonlyMap<string, string> = new Map(),
): Promise<void> {
  const db = await database();
  const tx = db.transaction(['batches', 'summaries'], 'readwrite');
  const shelved = batches.map((batch) => ({
    ...shelvedNext(batch, undefined),
    archivedAt: archived.get(batch.id) ?? null,
  }));
  await Promise.all([
    ...batches.map((batch) => tx.objectStore('batches').add(batch)),
    ...shelved.map((summary) => tx.objectStore('summaries').put(summary)),
    tx.done,
  ]);
  for (const { id } of batches) announce({ id, rev: 1 });
}

/** Moves a record that cannot be read out of the way, whole. */
export async function setAside(id: string, at: string, raw: unknown): Promise<void> {
  const db = await database();
  const tx = db.transaction(['batches', 'summaries', 'aside'], 'readwrite');
  await Promise.all([
    tx.objectStore('aside').put({ id, at, raw }),
    tx.objectStore('batches').delete(id),
    tx.objectStore('summaries').delete(id),
    tx.done,
  ]);
}

import { benchId, setBenchId } from './bench-id.ts';
import { database } from './database.ts';

/*
 * What a page asks of the device when it wakes. In a module of its own: a blank bench fetches nothing else.
 */

/** Id of the batch on the bench, or null when there is none. */
export async function currentId(): Promise<string | null> {
  const mine = benchId();
  if (mine !== null) return mine || null;
  const db = await database();
  return (await db.get('desk', 'current')) ?? null;
}

/** Takes the batch off the bench: the next page opens empty. The record itself stays. */
export async function clearCurrent(): Promise<void> {
  setBenchId('');
  const db = await database();
  await db.delete('desk', 'current');
}

/** Lays a stored record on the bench: the next page opens it. */
export async function putOnBench(id: string): Promise<void> {
  setBenchId(id);
  const db = await database();
  await db.put('desk', id, 'current');
}

/** The stored record as it lies there, unread. */
export async function rawBatch(id: string): Promise<unknown> {
  const db = await database();
  return db.get('batches', id);
}

/** The stored record, unread, with the number of its last write. */
export async function rawWithRev(id: string): Promise<{ raw: unknown; rev: number } | null> {
  const db = await database();
  const tx = db.transaction(['batches', 'summaries']);
  const [raw, shelved] = await Promise.all([
    tx.objectStore('batches').get(id),
    tx.objectStore('summaries').get(id),
    tx.done,
  ]);
  return raw === undefined ? null : { raw, rev: shelved?.rev ?? 0 };
}

import type { Batch } from '@larderwright/calc/batch';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { DATABASE } from './database-name.ts';

/**
 * What is kept on the device, in the IndexedDB database `larderwright`:
 *
 *   batches   one record a batch, keyed by `id`, exactly the JSON of calc's `Batch`
 *   aside     a record that could not be read, kept whole under its id until a person deals with it
 *   desk      small facts about this device; `current` is the id of the batch on the bench
 *
 * A record is born at the first edit of an empty worksheet, or when a demo is opened; every edit rewrites
 * it within half a second (autosave.ts). Reading goes through calc's `readBatch`: an older version is
 * migrated, a newer one refused, a damaged one moved to `aside`. Nothing is ever sent anywhere.
 */
interface DeskSchema extends DBSchema {
  batches: { key: string; value: Batch };
  aside: { key: string; value: { id: string; at: string; raw: unknown } };
  desk: { key: string; value: string };
}

const VERSION = 1;

let opening: Promise<IDBPDatabase<DeskSchema>> | null = null;

function database(): Promise<IDBPDatabase<DeskSchema>> {
  opening ??= openDB<DeskSchema>(DATABASE, VERSION, {
    upgrade(db) {
      db.createObjectStore('batches', { keyPath: 'id' });
      db.createObjectStore('aside', { keyPath: 'id' });
      db.createObjectStore('desk');
    },
    // Another tab wants a newer layout: let go, or it waits for ever.
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
      opening = null;
    },
    terminated() {
      opening = null;
    },
  });
  opening.catch(() => {
    opening = null;
  });
  return opening;
}

/** Writes the batch and makes it the current one, in one transaction. */
export async function saveBatch(batch: Batch): Promise<void> {
  const db = await database();
  const tx = db.transaction(['batches', 'desk'], 'readwrite');
  await Promise.all([
    tx.objectStore('batches').put(batch),
    tx.objectStore('desk').put(batch.id, 'current'),
    tx.done,
  ]);
}

/** Id of the batch on the bench, or null when nothing was ever saved. */
export async function currentId(): Promise<string | null> {
  const db = await database();
  return (await db.get('desk', 'current')) ?? null;
}

/** Takes the batch off the bench: the next page opens empty. The record itself stays. */
export async function clearCurrent(): Promise<void> {
  const db = await database();
  await db.delete('desk', 'current');
}

/** The stored record as it lies there, unread. */
export async function rawBatch(id: string): Promise<unknown> {
  const db = await database();
  return db.get('batches', id);
}

/** Moves a record that cannot be read out of the way, whole. */
export async function setAside(id: string, at: string, raw: unknown): Promise<void> {
  const db = await database();
  const tx = db.transaction(['batches', 'aside'], 'readwrite');
  await Promise.all([
    tx.objectStore('aside').put({ id, at, raw }),
    tx.objectStore('batches').delete(id),
    tx.done,
  ]);
}

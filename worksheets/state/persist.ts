import { database } from './database.ts';

/** Whether the browser promised to keep what is here when its disk runs full. `unknown`: it cannot be asked. */
export type Persistence = 'promised' | 'not-promised' | 'unknown';

/** Asks the browser, once a device, not to clear what is kept. Called when the first batch is written. */
export async function askToPersist(): Promise<void> {
  const storage = navigator.storage as StorageManager | undefined;
  if (!storage?.persist) return;
  try {
    const db = await database();
    if ((await db.get('desk', 'persistAsked')) !== undefined) return;
    await db.put('desk', new Date().toISOString(), 'persistAsked');
    await storage.persist();
  } catch {
    // A refusal is no fault: the page of batches says what the browser promises.
  }
}

export async function persistence(): Promise<Persistence> {
  const storage = navigator.storage as StorageManager | undefined;
  if (!storage?.persisted) return 'unknown';
  try {
    return (await storage.persisted()) ? 'promised' : 'not-promised';
  } catch {
    return 'unknown';
  }
}

/** Bytes this site uses here and may use; null where the browser does not say. */
export async function roomLeft(): Promise<{ usedBytes: number; ofBytes: number } | null> {
  const storage = navigator.storage as StorageManager | undefined;
  if (!storage?.estimate) return null;
  try {
    const { usage, quota } = await storage.estimate();
    return usage === undefined || quota === undefined ? null : { usedBytes: usage, ofBytes: quota };
  } catch {
    return null;
  }
}

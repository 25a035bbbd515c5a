import { type Batch, readBatch } from '@larderwright/calc/batch';
import { nowIso } from './clock.ts';
import { database, type Shelved } from './database.ts';
import { allRecords } from './storage.ts';

/** A backup is due after so many changed batches, or so many days after the first change. */
const MOST_CHANGED = 10;
const MOST_DAYS = 14;
const DAY_MS = 86_400_000;

/** What has changed since the last backup of this device. */
export interface BackupState {
  /** ISO 8601; null: there was none yet. */
  readonly lastAt: string | null;
  readonly changed: number;
  readonly due: boolean;
}

/** Demos need no backup: the site has them. */
export function backupState(batches: readonly Shelved[], lastAt: string | null, nowMs: number): BackupState {
  const sinceMs = lastAt === null ? -Infinity : Date.parse(lastAt);
  const changed = batches.filter(({ demo, updatedAt }) => !demo && Date.parse(updatedAt) > sinceMs);
  const firstMs = Math.min(...changed.map(({ updatedAt }) => Date.parse(updatedAt)));
  const due = changed.length >= MOST_CHANGED || nowMs - firstMs > MOST_DAYS * DAY_MS;
  return { lastAt, changed: changed.length, due };
}

/** When this device was last backed up, or null. */
export async function lastBackup(): Promise<string | null> {
  const db = await database();
  return (await db.get('desk', 'backedUpAt')) ?? null;
}

/** Remembers that everything here was saved to a file just now. */
export async function noteBackup(): Promise<void> {
  const db = await database();
  await db.put('desk', nowIso(), 'backedUpAt');
}

/** The day this device was last asked about its backup, in localStorage: lost with it, it is asked again. */
const LOOKED_ON = 'larderwright.backup';

function lookedToday(today: string): boolean {
  try {
    if (localStorage.getItem(LOOKED_ON) === today) return true;
    localStorage.setItem(LOOKED_ON, today);
    return false;
  } catch {
    return true;
  }
}

/**
 * The state of the backup if it is due and nobody was told today; null otherwise. Asks the device for more than a date
 * once a day at most.
 */
export async function backupReminder(): Promise<BackupState | null> {
  if (lookedToday(nowIso().slice(0, 10))) return null;
  const db = await database();
  const state = backupState(await db.getAll('summaries'), await lastBackup(), Date.now());
  return state.due ? state : null;
}

/**
 * Saves every batch of this device to one file, with what else is kept here. Records that cannot be read are left out
 * and counted.
 *
 * @param schema address of the published form of such files
 */
export async function backUpAll(schema: string): Promise<{ saved: number; unreadable: number }> {
  const records = await allRecords();
  const batches: Batch[] = [];
  for (const { raw } of records) {
    const read = readBatch(raw);
    if (read.ok) batches.push(read.batch);
  }
  const [{ saveBatches }, { devicePart }] = await Promise.all([
    import('./save-file.ts'),
    import('./device-part.ts'),
  ]);
  saveBatches(batches, ['larderwright', 'all-batches', nowIso().slice(0, 10)], schema, await devicePart());
  await noteBackup();
  return { saved: batches.length, unreadable: records.length - batches.length };
}

import { type Batch, readBatch } from '@larderwright/calc/batch';
import { nowIso } from './clock.ts';
import { type Aside, type Binned, database, type Shelved } from './database.ts';
import { announce } from './other-tabs.ts';
import { setAside, shelvedNext } from './storage.ts';

/** Days a deleted batch can be taken back. */
export const BIN_DAYS = 30;
const DAY_MS = 86_400_000;

/** Everything the page of batches shows. */
export interface Shelf {
  readonly batches: readonly Shelved[];
  readonly bin: readonly Binned[];
  readonly aside: readonly Aside[];
}

/** Gives a summary to every record that has none: written by an earlier layout, or beside it. */
async function summarise(ids: readonly string[]): Promise<void> {
  const db = await database();
  for (const id of ids) {
    const raw = await db.get('batches', id);
    const read = readBatch(raw);
    if (read.ok) {
      const tx = db.transaction(['batches', 'summaries'], 'readwrite');
      const before = await tx.objectStore('summaries').get(id);
      if (!before) await tx.objectStore('summaries').put(shelvedNext(read.batch, undefined));
      await tx.done;
    } else if (read.problem === 'damaged') {
      await setAside(id, nowIso(), raw);
    }
  }
}

/** What is on this device: one look at the summaries, never at the records themselves. */
export async function openShelf(): Promise<Shelf> {
  const db = await database();
  const [ids, known] = await Promise.all([db.getAllKeys('batches'), db.getAllKeys('summaries')]);
  const summarised = new Set(known);
  const without = ids.filter((id) => !summarised.has(id));
  if (without.length > 0) await summarise(without);
  const [batches, bin, aside] = await Promise.all([
    db.getAll('summaries'),
    db.getAll('bin'),
    db.getAll('aside'),
  ]);
  return { batches, bin, aside };
}

/** Throws out what has lain in the bin too long. */
export async function emptyOldBin(nowMs: number): Promise<void> {
  const db = await database();
  const old = (await db.getAll('bin')).filter(({ at }) => nowMs - Date.parse(at) > BIN_DAYS * DAY_MS);
  if (old.length === 0) return;
  const tx = db.transaction('bin', 'readwrite');
  await Promise.all([...old.map(({ id }) => tx.store.delete(id)), tx.done]);
}

/** Moves a batch to the bin, whole. */
export async function deleteBatch(id: string): Promise<void> {
  const db = await database();
  const tx = db.transaction(['batches', 'summaries', 'bin', 'desk'], 'readwrite');
  const [raw, shelved, current] = await Promise.all([
    tx.objectStore('batches').get(id),
    tx.objectStore('summaries').get(id),
    tx.objectStore('desk').get('current'),
  ]);
  await Promise.all([
    raw === undefined
      ? undefined
      : tx.objectStore('bin').put({ id, at: nowIso(), raw, shelved: shelved ?? null }),
    tx.objectStore('batches').delete(id),
    tx.objectStore('summaries').delete(id),
    current === id ? tx.objectStore('desk').delete('current') : undefined,
    tx.done,
  ]);
  announce({ id, rev: 0 });
}

/** Takes a batch out of the bin again. */
export async function putBackBatch(id: string): Promise<void> {
  const db = await database();
  const tx = db.transaction(['batches', 'summaries', 'bin'], 'readwrite');
  const binned = await tx.objectStore('bin').get(id);
  if (binned) {
    const { raw, shelved } = binned;
    await Promise.all([
      tx.objectStore('batches').put(raw as Batch),
      shelved ? tx.objectStore('summaries').put({ ...shelved, rev: shelved.rev + 1 }) : undefined,
      tx.objectStore('bin').delete(id),
    ]);
  }
  await tx.done;
}

/** Puts a batch out of the way, or back among those in use. */
export async function archiveBatch(id: string, archivedAt: string | null): Promise<void> {
  const db = await database();
  const tx = db.transaction('summaries', 'readwrite');
  const shelved = await tx.store.get(id);
  if (shelved) await tx.store.put({ ...shelved, archivedAt });
  await tx.done;
}

/** Throws away a record that could not be read. */
export async function dropAside(id: string): Promise<void> {
  const db = await database();
  await db.delete('aside', id);
}

/** Tries a record again that could not be read, as after an update of the site. */
export async function retryAside(id: string): Promise<boolean> {
  const db = await database();
  const aside = await db.get('aside', id);
  const read = aside && readBatch(aside.raw);
  if (!read?.ok) return false;
  const tx = db.transaction(['batches', 'summaries', 'aside'], 'readwrite');
  await Promise.all([
    tx.objectStore('batches').put(read.batch),
    tx.objectStore('summaries').put(shelvedNext(read.batch, undefined)),
    tx.objectStore('aside').delete(id),
    tx.done,
  ]);
  return true;
}

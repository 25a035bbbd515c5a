import {
  BATCH_SCHEMA,
  type Batch,
  changeOfConflict,
  changesBetween,
  type HistoryEntry,
  type MergeConflict,
  mergeBatches,
  withChanges,
} from '@larderwright/calc/batch';
import { setBenchId } from './bench-id.ts';
import { nowIso } from './clock.ts';
import { tellConflicts } from './conflicts.ts';
import { database } from './database.ts';
import { $history } from './kept-history.ts';
import { keptSetting } from './kept-setting.ts';
import { announce, hearOtherTabs } from './other-tabs.ts';
import { askToPersist } from './persist.ts';
import { markFromDevice, markSaved } from './shown.ts';
import { rawWithRev, shelvedNext } from './storage.ts';
import { $batch, $notice, wasBegunHere, withSlices } from './store.ts';
import { who } from './who.ts';

/*
 * Keeps the batch of this page on the device. Another tab may write the same record: every write looks, in one
 * transaction, whether the record is still the one this page knows. If not, the two are put together field by field,
 * and a field with two values is told. Changes of readings, weights and signatures go into the record's history with the
 * same write.
 */

/** What this page last agreed on with the device. `rev` 0: not written yet. */
let agreed: { batch: Batch; rev: number } | null = null;
/** The record as it stood when the last burst of typing was closed: what is typed since is one entry a field. */
let closed: { batch: Batch; history: readonly HistoryEntry[]; atMs: number } | null = null;
/** Fields with two values found in this burst: both go into the history, followed or not. */
let found: readonly MergeConflict[] = [];
let lastKeptMs = 0;

/** A pause as long as this closes a burst of typing, and so does this much typing without a pause. */
const PAUSE_MS = 3_000;
const LONGEST_BURST_MS = 20_000;

let hears = false;
/** Fields with two values that the other tabs have not been told of yet. */
let untold: readonly MergeConflict[] = [];
let queue: Promise<unknown> = Promise.resolve();

/** One write or read of the record after the other. */
function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const turn = queue.then(work);
  queue = turn.catch(() => {});
  return turn;
}

function close(batch: Batch): void {
  closed = { batch, history: batch.history, atMs: Date.now() };
  found = [];
  $history.set({ batchId: batch.id, history: batch.history });
}

/** Tells that the page now shows this record, read from the device at that revision. */
export function opened(batch: Batch, rev: number): void {
  agreed = { batch, rev };
  close(batch);
  if (hears) return;
  hears = true;
  hearOtherTabs(({ id, rev: written, conflicts }) => {
    if (agreed?.batch.id !== id) return;
    if (written === 0) $notice.set({ id: 'batch-deleted', detail: '' });
    else if (written !== agreed.rev) void inTurn(pull);
    // Here too the writer's value is now the one on screen, and the other was typed here.
    if (conflicts) tellConflicts(conflicts);
  });
}

/** The history of a record with what this burst of typing changed at its end. */
function withBurst(batch: Batch, nowMs: number): Batch {
  if (!closed || closed.batch.id !== batch.id) close(batch);
  const long = closed !== null && nowMs - closed.atMs > LONGEST_BURST_MS;
  if (agreed?.batch.id === batch.id && (long || nowMs - lastKeptMs > PAUSE_MS)) close(agreed.batch);
  lastKeptMs = nowMs;
  if (!closed) return batch;
  const changes = changesBetween(closed.batch, batch);
  for (const conflict of found)
    if (!changes.some(({ what }) => what === conflict.path)) changes.push(changeOfConflict(conflict));
  return { ...batch, history: withChanges(batch.id, closed.history, changes, nowIso(), who()) };
}

interface Kept {
  readonly saved: Batch;
  readonly rev: number;
  readonly conflicts: readonly MergeConflict[];
  readonly merged: boolean;
}

/** Puts what the device holds and what this page holds together. From now on the device's is what both started from. */
function together(base: Batch, ours: Batch, stored: Batch) {
  const theirs = withSlices(stored);
  const merged = mergeBatches(withSlices(base), ours, theirs);
  close(theirs);
  found = merged.conflicts;
  return merged;
}

async function write(batch: Batch): Promise<Kept | 'deleted'> {
  const { id } = batch;
  const db = await database();
  const tx = db.transaction(['batches', 'summaries', 'desk', 'bin'], 'readwrite');
  const [stored, shelved, binned] = await Promise.all([
    tx.objectStore('batches').get(id),
    tx.objectStore('summaries').get(id),
    tx.objectStore('bin').getKey(id),
  ]);
  const known = agreed?.batch.id === id ? agreed : null;
  if (stored === undefined && known && known.rev > 0 && binned !== undefined) {
    await tx.done;
    return 'deleted';
  }
  const foreign = stored !== undefined && known !== null && (shelved?.rev ?? 0) !== known.rev;
  const joined = foreign ? together(known.batch, batch, stored) : { batch, conflicts: [] };
  const saved = withBurst(joined.batch, Date.now());
  const next = shelvedNext(saved, shelved);
  await Promise.all([
    tx.objectStore('batches').put(saved),
    tx.objectStore('summaries').put(next),
    tx.objectStore('desk').put(id, 'current'),
    tx.done,
  ]);
  if (stored === undefined && known && known.rev > 0) $notice.set({ id: 'storage-cleared', detail: '' });
  return { saved, rev: next.rev, conflicts: joined.conflicts, merged: foreign };
}

/** Keeps an edit. Another tab's edits of the same record are never written over. */
export function keepEdit(batch: Batch): Promise<void> {
  return inTurn(async () => {
    if (agreed && agreed.batch.id !== batch.id) closed = null;
    const kept = await write(batch);
    if (kept === 'deleted') {
      $notice.set({ id: 'batch-deleted', detail: '' });
      return;
    }
    const { saved, rev, conflicts, merged } = kept;
    const wasNew = agreed?.batch.id !== batch.id;
    if (wasNew) opened(saved, rev);
    else agreed = { batch: saved, rev };
    setBenchId(saved.id);
    $history.set({ batchId: saved.id, history: saved.history });
    if (merged) takeOver(batch, saved);
    tell(conflicts);
    announce({ id: saved.id, rev, ...(untold.length > 0 ? { conflicts: untold } : {}) });
    untold = [];
    if (rev !== 1) return;
    void askToPersist();
    if (wasBegunHere(saved.id) && keptSetting('version') !== undefined)
      void import('./kitchen.ts').then(({ beginWithKitchen }) => beginWithKitchen(saved.id));
  });
}

/** Tells of fields with two values here, and with the next write in the other tabs. */
function tell(conflicts: readonly MergeConflict[]): void {
  untold = [...untold, ...conflicts];
  tellConflicts(conflicts);
}

/** Shows what came from the device, with what was typed since it was sent there. */
function takeOver(sent: Batch, saved: Batch): void {
  const now = $batch.get();
  if (now.id !== saved.id) return;
  const { batch, conflicts } =
    now === sent ? { batch: saved, conflicts: [] } : mergeBatches(sent, now, saved);
  if (now === sent) markSaved(batch);
  markFromDevice(batch);
  $batch.set(batch);
  tell(conflicts);
}

/** Another tab has written: takes its changes into the page. */
async function pull(): Promise<void> {
  const known = agreed;
  if (!known) return;
  const lying = await rawWithRev(known.batch.id);
  if (!lying || lying.rev === known.rev || $batch.get().id !== known.batch.id) return;
  const stored = lying.raw as Batch;
  if (stored.schema !== BATCH_SCHEMA) {
    $notice.set({ id: 'record-newer', detail: String(stored.schema) });
    return;
  }
  const now = $batch.get();
  const { batch, conflicts } = together(known.batch, now, stored);
  agreed = { batch: withSlices(stored), rev: lying.rev };
  const nothingOfOurs = changesNothing(batch, agreed.batch);
  if (nothingOfOurs) markSaved(batch);
  markFromDevice(batch);
  $batch.set(batch);
  tell(conflicts);
}

function changesNothing(a: Batch, b: Batch): boolean {
  return JSON.stringify({ ...a, updatedAt: '' }) === JSON.stringify({ ...b, updatedAt: '' });
}

/** Writes a batch that another tab deleted back into its place, as this page holds it. */
export async function keepAfterAll(): Promise<void> {
  await inTurn(async () => {
    const { putBackBatch } = await import('./shelf.ts');
    const id = $batch.get().id;
    await putBackBatch(id);
    const lying = await rawWithRev(id);
    if (lying && agreed) agreed = { ...agreed, rev: lying.rev };
  });
  $notice.set(null);
  await keepEdit($batch.get());
}

import type { Batch, OptionalSlices } from '@larderwright/calc/batch';
import { newBatch } from '@larderwright/calc/batch';
import type { Entry } from '@larderwright/calc/quantities';
import { atom } from 'nanostores';
import { newRecordId, nowIso, zoneHere } from './clock.ts';
import { setAt } from './paths.ts';

/**
 * The one batch a page works on. It starts as the same empty record on the server and in the browser,
 * so that the first paint agrees with the HTML; a saved batch is put in afterwards.
 */
export const emptyBatch: Batch = newBatch({ id: 'empty', at: '', zone: 'UTC' });
export const $batch = atom<Batch>(emptyBatch);

/**
 * Where the batch on screen comes from.
 * `waking`: the page has not yet looked for a saved batch; fields take no typing, so that none is lost.
 * `blank`: there is none. `open`: a record of this device, saved as it is edited.
 */
export type Life = 'waking' | 'blank' | 'open';
export const $life = atom<Life>('waking');

/** Messages about the record itself (storage blocked, record damaged), by id of the words. */
export interface Notice {
  id:
    | 'storage-failed'
    | 'storage-full'
    | 'storage-blocked'
    | 'storage-cleared'
    | 'batch-deleted'
    | 'record-damaged'
    | 'record-newer'
    | 'demo-missing'
    | 'example-missing'
    | 'batch-missing';
  detail: string;
}
export const $notice = atom<Notice | null>(null);

type SliceName = keyof OptionalSlices;
const makers = new Map<SliceName, () => unknown>();

/** A batch with the slices of the page's worksheets begun, where it had none. */
export function withSlices(batch: Batch): Batch {
  const missing = [...makers].filter(([name]) => batch[name] === undefined);
  if (missing.length === 0) return batch;
  return { ...batch, ...Object.fromEntries(missing.map(([name, make]) => [name, make()])) };
}

/**
 * Begins an optional slice on every batch this page shows. Called once at the top of a worksheet's module,
 * on the server and in the browser alike, so that both render the same fields.
 */
export function provideSlice<Name extends SliceName>(name: Name, make: () => NonNullable<Batch[Name]>): void {
  makers.set(name, make);
  Object.assign(emptyBatch, { [name]: emptyBatch[name] ?? make() });
  $batch.set(withSlices($batch.get()));
}

let begun = '';

/** Whether a record was begun on this page, by the first edit of an empty worksheet. */
export const wasBegunHere = (id: string): boolean => id === begun;

/** Changes the batch. The first edit of an empty page begins a record of its own. */
export function edit(change: (batch: Batch) => Batch): void {
  const before = $batch.get();
  const after = change(before);
  if (after === before) return;
  const at = nowIso();
  if (before.id === emptyBatch.id) {
    begun = newRecordId();
    $batch.set({ ...after, id: begun, createdAt: at, updatedAt: at, zone: zoneHere() });
    $life.set('open');
  } else {
    $batch.set({ ...after, updatedAt: at });
  }
}

/** Replaces the field at a path. */
export function editAt(path: string, value: unknown): void {
  edit((batch) => setAt(batch, path, value));
}

/** A value of the batch as the number field it must be. Throws when the path named something else. */
export function asEntry(value: unknown, path: string): Entry {
  if (typeof value === 'object' && value !== null && 'text' in value && 'origin' in value)
    return value as Entry;
  throw new Error(`${path} is not a number field`);
}

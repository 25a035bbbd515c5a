import type { Batch } from '@larderwright/calc/batch';

let saved: Batch | null = null;

/** Tells that this very batch came from the device: showing it is no edit. */
export function markSaved(batch: Batch): void {
  saved = batch;
}

export const isSaved = (batch: Batch): boolean => batch === saved;

const fromDevice = new WeakSet<Batch>();

/** Tells that a batch on screen got changes from the device, maybe beside some of this page's own. */
export function markFromDevice(batch: Batch): void {
  fromDevice.add(batch);
}

/** Whether the last change of the batch came from elsewhere: it is no step of this page. */
export const isFromDevice = (batch: Batch): boolean => isSaved(batch) || fromDevice.has(batch);

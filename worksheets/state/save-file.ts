import type { Batch } from '@larderwright/calc/batch';
import { type DevicePart, safeFileName, writeBatchFile } from '@larderwright/calc/exchange';
import { nowIso } from './clock.ts';

/** Hands a text to the browser as a file to keep. Nothing is sent anywhere and no storage is needed. */
export function saveText(text: string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the address after the click is over.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * Saves batches to a file that this site takes in again.
 *
 * @param words what the file is called by
 * @param schema address of the published form of such files
 * @param device in a file of all there is: what the device keeps beside its batches
 */
export function saveBatches(
  batches: readonly Batch[],
  words: readonly string[],
  schema: string,
  device?: DevicePart,
): void {
  const schemaAddress = new URL(schema, location.href).href;
  const text = writeBatchFile(batches, { schemaAddress, at: nowIso() }, device);
  saveText(text, safeFileName(words, 'json'), 'application/json');
}

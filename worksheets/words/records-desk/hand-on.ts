import { plural } from '../plural.ts';

export const noBatchLiesDeviceYetBegin =
  'No batch lies on this device yet. Begin one, or bring one in below.';
export const batch = 'Batch';
export const onTheBench = ' (on the bench)';
export const asAFileToKeepOr = 'As a file, to keep or to open here again';
export const saveThisBatch = 'Save this batch';
export const saveAllThereIs = 'Save all there is';
export const wasHandedToYourBrowserTo2 = (name: string) => `${name} was handed to your browser to save.`;
export const wholeRecordNamesSignaturesAll2 =
  'The whole record, names and signatures with it. All there is takes your settings and oven records along. Keep such files off this device: they are the backup.';
export const saveAllBatches2 = (length: number) => `Save all ${length} batches`;
export const recordsDeviceCannotReadNotFile2 = (unreadable: number) =>
  `${unreadable} ${plural(unreadable, { one: 'record', other: 'records' })} on this device cannot be read and ${plural(unreadable, { one: 'is', other: 'are' })} not in the file.`;

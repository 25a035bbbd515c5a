import type { Slot } from '../slot.ts';

export const deviceDoesNotLetPageBatches = (failure: string) =>
  `This device does not let the page at its batches (${failure}).`;
export const lookingRecordDevice = 'Looking for the record on this device …';
export const noSheetNamedPointCameraDevice =
  'No sheet was named. Point the camera of this device at the square code on a printed sheet, and open what it reads.';
export const recordSheetNotDevice = 'The record of this sheet is not on this device.';
export const bringTheRecordIn = 'bring the record in';
export const batchesStayWhereTypedScanCode = (a: Slot): Slot => [
  'Batches stay where they were typed. Scan the code with the device the sheet was printed from, or ',
  a,
  ' from a file.',
];
export const recordCheckOnThePaper = (id: string, sum: string) => `Record ${id}, check ${sum} on the paper.`;
export const recordSheetDeviceCannotReadNot =
  'The record of this sheet is on this device, but it cannot be read. It was not changed.';
export const isOnTheBenchAsIt = (title: string) => `${title} is on the bench, as it was printed.`;
export const openTheBatchSheet = 'Open the batch sheet';
export const recordHasChangedSinceSheet = 'The record has changed since this sheet was printed.';
export const benchStandsNowPaperSaysCheck = (title: string, sum: string, now: string) =>
  `${title} is on the bench as it stands now. The paper says check ${sum}, the record says ${now}. Where they differ, find out which is right before you go by either.`;

import { plural } from '../plural.ts';

export const notOnThisDeviceYet = 'Not on this device yet.';
export const deviceAlreadySameLetterTaken =
  'On this device already, the same to the letter. Taken in, it would stand there twice.';
export const deviceAlreadyDifferentTaken =
  'On this device already, and different. Taken in, both are kept: this one as a batch of its own.';
export const batchesInTheFile = 'Batches in the file';
export const takeIn = 'Take in';
export const batch = 'Batch';
export const lastEdited = 'Last edited';
export const againstThisDevice = 'Against this device';
export const demoInvented = ' · DEMO, invented';
export const leaveTheFile = 'Leave the file';
export const ofThemNotToBeRead2 = (unreadable: number) => `, ${unreadable} of them not to be read`;
export const batchesNothingIsTakenInYet2 = (length: number, unreadable: string) =>
  `${length} ${plural(length, { one: 'batch', other: 'batches' })}${unreadable}. Nothing is taken in yet.`;
export const batchOfTheFileUnnamed2 = (place: number) => `Batch ${place} of the file, unnamed`;
export const takeIn4 = (title: string) => `Take in ${title}`;
export const andMoreTickedInTheSame2 = (length: number) => `and ${length} more, ticked in the same way.`;
export const takeIn5 = (taken: string) => `Take in ${taken}`;

import { plural } from '../plural.ts';

export const browserHasPromisedNotClear = 'The browser has promised not to clear it by itself.';
export const browserMayClearWhenDiskRuns =
  'The browser may clear it when the disk runs full, or after weeks without a visit. Back up, and use this site often or install it.';
export const browserDoesNotSayWhetherMay = 'The browser does not say whether it may clear it. Back up.';
export const under01Mb = 'under 0.1 MB';
export const keptOnThisDevice = 'Kept on this device';
export const theFileCouldNotBeMade = 'The file could not be made.';
export const neverBackedUp = 'Never backed up.';
export const backUp = 'Back up.';
export const nothingHasChangedSince = 'Nothing has changed since.';
export const saveAllBatchesToAFile = 'Save all batches to a file';
export const deleted = 'Deleted';
export const putBack2 = 'Put back';
export const canReadAgainBackList = 'It can be read again and is back in the list.';
export const itStillCannotBeRead = 'It still cannot be read.';
export const setAside = 'Set aside';
export const theseRecordsCouldNotReadNot =
  'These records could not be read. They were not changed. Save them before you throw them away.';
export const saveToAFile = 'Save to a file';
export const tryAgain = 'Try again';
export const throwAway = 'Throw away';
export const whatItHolds = 'What it holds';
export const mb2 = (bytes: string) => `${bytes} MB`;
export const batchEsSavedFileKeepAway2 = (saved: number) =>
  `${saved} batch${plural(saved, { one: '', other: 'es' })} saved to a file. Keep it away from this device.`;
export const couldNotBeReadAndAre2 = (unreadable: number) =>
  ` ${unreadable} could not be read and are not in it.`;
export const lastBackedUp2 = (lastAt: string) => `Last backed up ${lastAt}.`;
export const batchEsHaveChangedSince2 = (changed: number) =>
  `${changed} batch${plural(changed, { one: ' has', other: 'es have' })} changed since.`;
export const usedFreeForIt2 = (usedBytes: string, ofBytes: string) =>
  ` ${usedBytes} used, ${ofBytes} free for it.`;
export const wholeDaysThenGoneAuthorityMay2 = (binDays: number) =>
  `Whole for ${binDays} days, then gone. Your authority may ask for records longer than that.`;
export const deleted3 = (at: string) => `deleted ${at}`;
export const putBack3 = (name: string) => `Put back ${name}`;
export const setAside3 = (at: string) => `set aside ${at}`;

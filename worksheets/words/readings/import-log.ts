import type { Slot } from '../slot.ts';

export const tooLargeReadHereLoadPart = (name: string) =>
  `${name} is too large to be read here. Load a part of it.`;
export const couldNotBeReadFromThis = (name: string) => `${name} could not be read from this device.`;
export const thePastedText = 'The pasted text';
export const readingsTakenInto = (length: number, logName: string) =>
  `${length} readings taken into ${logName}.`;
export const pasteALogOrLoadA = "Paste a log, or load a logger's file";
export const oneReadingLineTimeThen = 'One reading a line: time, then temperature';
export const such1415684Columns =
  'Such as "14:15 68.4". Columns may be parted by tabs, semicolons, commas or spaces; dates, headings and further columns may stand there.';
export const orAFile = 'or a file';
export const characters = (strong: Slot, length: number): Slot => [strong, ', ', length, ' characters.'];
export const putItAway = 'Put it away';
export const readingTheLog = 'Reading the log …';

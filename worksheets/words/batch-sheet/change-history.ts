import { plural } from '../plural.ts';

export const historyOfChanges = 'History of changes';
export const check = 'Check';
export const entryDoesNotFitThoseBefore = (fault: number) =>
  `Entry ${fault} does not fit those before it. The history was changed outside this site.`;
export const noReadingWeightSignature =
  'No reading, weight or signature was changed after it was first written down.';
export const changeS = (length: number) => `${length} change${plural(length, { one: '', other: 's' })}`;
export const printTheHistory = 'Print the history';
export const when = 'When';
export const what = 'What';
export const from = 'From';
export const to = 'To';
export const who = 'Who';

import { plural } from '../plural.ts';

export const historyOfChanges = 'History of changes';
export const entryDoesNotFitThoseBefore = (fault: number) => `Entry ${fault} does not fit those before it.`;
export const whatChangedRecordAfterFirst =
  'What was changed in the record after it was first written down. It shows a slip or a careless hand, and is no proof against someone who means to deceive.';
export const noRuleIsJudgedHere = 'No rule is judged here';
export const changeSTheFirstOnTop = (length: number) =>
  `${length} change${plural(length, { one: '', other: 's' })}, the first on top`;
export const when = 'When';
export const what = 'What';
export const from = 'From';
export const to = 'To';
export const who = 'Who';
export const sum = 'Sum';
export const readBy = 'Read by';
export const name = 'Name';
export const date = 'Date';

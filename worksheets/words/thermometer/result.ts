import { plural } from '../plural.ts';

export const offInIceAndInBoiling = 'Off in ice, and in boiling water';
export const notRead = 'not read';
export const cannotTellNotRead = 'Cannot tell: not read';
export const offAtTheLimit = (limit: string) => `Off at the limit, ${limit}`;
export const offAt70C158F = 'Off at 70 °C (158 °F), no limit being named';
export const itsDisplayMustShow = 'Its display must show';
export const cannotTellErrorNotWrittenDown = 'Cannot tell: its error is not written down';
export const nothingNoGoodCheck = 'Nothing: no good check';
export const oneLog = 'One log';
export const logs = (logs: number) => `${logs} logs`;
export const ofThisBatchAreJudgedWith = (logs: string, logs2: number) =>
  `${logs} of this batch ${plural(logs2, { one: 'is', other: 'are' })} judged with it.`;
export const nameBesideProbeCookLogLog =
  'Name it beside a probe on the cook log, and its log is judged with it.';

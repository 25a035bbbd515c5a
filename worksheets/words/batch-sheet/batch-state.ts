import type { Slot } from '../slot.ts';

export const plannedAgain = 'Planned again';
export const inProcess = 'In process';
export const holdItNothingLeaves = 'Hold it: nothing leaves';
export const releaseIt = 'Release it';
export const discardIt = 'Discard it';
export const and = ' and ';
export const whatMeasuredNobodyHasSaidYet = ', by what was measured. Nobody has said so yet';
export const theBatchIs = (span: Slot, change: string): Slot => ['The batch is ', span, change, '.'];
export const whoIsAtThisBench = 'Who is at this bench';
export const nameInitialsKeptEveryChange =
  'Name or initials, kept with every change until this tab is closed.';
export const earlierStates = 'Earlier states';
export const bringItIntoAnotherState = 'Bring it into another state';
export const leaveIt = 'Leave it';
export const secondPerson = 'Second person';
export const hasReadRecordDidNotMake = 'Has read the record, and did not make the batch.';
export const why = 'Why';
export const whyIfThereIsMoreTo = 'Why, if there is more to say';
export const stop = 'STOP';
export const done = 'done';
export const not = (stateWords: string) => `Not ${stateWords}:`;

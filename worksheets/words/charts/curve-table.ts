export const theSameAsATable = 'The same as a table';
export const predictedNobodyMeasuredIt = ', predicted, nobody measured it';
export const ofReadingsHighestAndLowestKept = (length: number, length2: number) =>
  ` (${length} of ${length2} readings; highest and lowest kept)`;
export const day = 'Day';
export const sinceItWentIn = 'Since it went in';
export const time = 'Time';
export const coreC = 'Core °C';
export const mark = 'Mark';
export const excluded = 'excluded';
export const flagged = 'flagged';

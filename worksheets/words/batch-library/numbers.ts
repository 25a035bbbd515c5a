export const nothingCountsTwoBatchesDay =
  'Nothing in it counts: two batches of a day would share a number. Add {A} or {NN}.';
export const onlyOnePartMayCountA = 'Only one part may count: {A} or {NN}.';
export const notKnownHereWhatCanStand = (part: string) =>
  `{${part}} is not known here. What can stand in braces is listed below.`;
export const aBraceIsNotClosed = 'A brace is not closed.';
export const thatIsTooLongForA = 'That is too long for a label.';
export const batchNumbers = 'Batch numbers';
export const yourScheme = 'Your scheme';
export const nextOne = (next: string) => `Next one: ${next}`;
export const yyyyYyMmDdDateDdd =
  '{YYYY} {YY} {MM} {DD} date, {DDD} day of the year, {A} letter, {N} {NN} {NNN} count. All else stands as typed.';
export const batchWithoutNumberOfferedNext =
  'A batch without a number is offered the next one on its worksheets. A number of a deleted batch is not given again while the batch can be put back.';

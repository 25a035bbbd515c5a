export const usLetter = 'US Letter';
export const onPaper = 'On paper';
export const blackOnlyWithoutBatchPrints = (about: string) =>
  `${about} Black only. Without a batch it prints empty, to write on by hand.`;
export const paper = 'Paper';
export const print = 'Print';
export const theCardAsItPrints = 'The card as it prints';
export const ruleSetNoneChosen = 'Rule set: none chosen';
export const demoInventedNotARealBatch = 'DEMO, invented: not a real batch';
export const batchNo = 'Batch no. ____________';
export const stop = 'STOP';
export const printed = (printedAt: string) => ` · printed ${printedAt}`;
export const eEnteredDDefaultWWorked = (
  ruleSets: string,
  version: string,
  batchId: string,
  printedAt: string,
) =>
  `${ruleSets}${version}${batchId}${printedAt} · E entered, D default, W worked out · keep 12 months past the product’s life`;

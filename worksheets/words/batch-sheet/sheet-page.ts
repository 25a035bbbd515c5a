export const demoInventedNotARealBatch = 'DEMO, invented: not a real batch';
export const demoInvented = 'DEMO, invented';
export const batchSheet = (copy: string) => `Batch sheet, ${copy}`;
export const batchSheet2 = (copy: string) => `Batch sheet: ${copy}`;
export const batchNo = 'Batch no. ____________';
export const page1Of1 = (batchNo: string) => `${batchNo} · page 1 of 1`;
export const stop = 'STOP';
export const squareCodeFindsRecordSheet = 'Square code: finds the record of this sheet';
export const ruleSetNoneChosen = 'Rule set: none chosen · ';
export const calcRecord = (calcVersion: string, recordVersion: unknown) =>
  `calc ${calcVersion} · record ${recordVersion}`;
export const check = (check: string) => ` · check ${check}`;
export const printed = (printedAt: string) => ` · printed ${printedAt}`;
export const eEnteredDDefaultWWorked = (
  ruleSets: string,
  calcVersion: string,
  batchId: string,
  check: string,
  printedAt: string,
) =>
  `${ruleSets}${calcVersion}${batchId}${check}${printedAt} · E entered, D default, W worked out · keep 12 months past the product’s life`;

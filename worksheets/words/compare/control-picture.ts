export const standOut = (marked: number) => `, ${marked} stand out`;
export const batchesEveryPointStandsTable = (
  label: string,
  recorded: number,
  length: number,
  marked: string,
) => `${label}: ${recorded} of ${length} batches${marked}. Every point stands in the table below.`;
export const upper = 'upper';
export const mean = 'mean';
export const lower = 'lower';
export const stepFromTheBatchBefore = 'Step from the batch before';

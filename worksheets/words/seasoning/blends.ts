export const blend = (place: number) => `Blend ${place}`;
export const nameOfTheBlend = 'Name of the blend';
export const doseOfTheBlendOnThe = 'Dose of the blend, on the total mix';
export const mixForSoManyBatches = 'Mix for so many batches';
export const batches = 'batches';
export const largerStockWeighedMoreTrulyOne =
  "A larger stock is weighed more truly. One batch's share of it goes in.";
export const groundOn = 'Ground on';
export const addASpiceTo = (name: string) => `Add a spice to ${name}`;
export const ofThisBlendIntoTheBatch = 'Of this blend into the batch';
export const cannotTellPartsDoseTotalMix = 'Cannot tell: parts, dose or the total mix are missing';
export const derived = (massG: string) => `${massG} Derived.`;
export const stockToMix = 'Stock to mix';
export const whatBatchTakesTimesBatchesMix = 'What this batch takes, times the batches to mix for. Derived.';
export const batchesMixScaleShowsEverySpice = 'Batches to mix for, so that this scale shows every spice';
export const derivedFiveStepsCommonPractice = (stockTimesNeeded: string) =>
  `${stockTimesNeeded} Derived; five steps: common practice, no source.`;

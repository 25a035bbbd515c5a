export const oneTrialNoSpread = 'One trial: no spread.';
export const toStandardDeviationTrials = (min: string, max: string, sampleSd: string, count: number) =>
  `${min} to ${max}, standard deviation ${sampleSd}, ${count} trials.`;

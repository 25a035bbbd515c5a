import type { Slot } from '../slot.ts';

export const figure = 'Figure';
export const meanControlLimitsMeanStepMost = (
  mean: string,
  unit: string,
  lower: string,
  upper: string,
  meanRange: string,
  rangeUpper: string,
  recorded: Slot,
): Slot => [
  'Mean ',
  mean,
  ' ',
  unit,
  '; control limits ',
  lower,
  ' to ',
  upper,
  ' ',
  unit,
  '; mean step ',
  meanRange,
  ', at most ',
  rangeUpper,
  '. ',
  recorded,
];
export const batchByBatch = (label: string) => `${label}, batch by batch`;
export const batch = 'Batch';
export const count = 'Count';
export const step = 'Step';
export const saidOfIt = 'Said of it';
export const noNumber = 'no number';

export const whereWaterBoilsHere = 'Where water boils here';
export const theCheck = 'The check';
export const recordCheckWhatEachThermometer =
  'The record of the check: what each thermometer showed, its offset at the limit, what its display must show, and when it is due.';

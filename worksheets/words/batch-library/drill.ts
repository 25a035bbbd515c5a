import { plural } from '../plural.ts';

export const typeLotOffLabelSuppliersLetter =
  'Type a lot off a label or a supplier’s letter, or the number of one of your own batches. A drill once a year shows whether the records hold: start the clock, find everything, stop it, print.';
export const lot = 'Lot';
export const wholeLotBeginningDashesSpaces =
  'The whole lot or its beginning. Dashes and spaces do not matter.';
export const allFoundStopTheClock = 'All found: stop the clock';
export const startADrill = 'Start a drill';
export const print = 'Print';
export const noBatchDeviceHoldsNoProof =
  'No batch on this device holds it. That is no proof: a lot that nobody wrote down is not found.';
export const batchEsHoldIt = (length: number) =>
  `${length} batch${plural(length, { one: ' holds', other: 'es hold' })} it.`;
export const timeTaken = (startedAt: string) => ` Time taken: ${startedAt}.`;
export const theClockRuns = ' The clock runs.';
export const theDrillAsItPrints = 'The drill as it prints';
export const recallWhereALotWent = 'Recall: where a lot went';
export const noRuleIsJudgedHere = 'No rule is judged here';
export const lot2 = (lot: string) => `lot ${lot}`;
export const throughBatch = (through: string) => `through batch ${through}`;

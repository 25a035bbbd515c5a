import type { Slot } from '../slot.ts';

export const finishedWeightWeighedPlanned = 'the finished weight, weighed or planned';
export const howManyMouldsThereAre = 'how many moulds there are';
export const theWeightOfAPortion = 'the weight of a portion';
export const theLossOnEndsAndCrumbs = 'the loss on ends and crumbs';
export const theLengthOfAPiece = 'the length of a piece';
export const theThicknessOfASlice = 'the thickness of a slice';
export const whatComesOffEachEnd = 'what comes off each end';
export const whatTheBladeTakes = 'what the blade takes';
export const slicesToAPortion = 'slices to a portion';
export const asWeighed = 'As weighed.';
export const plannedWeighFinishedPiecesWhen = 'As planned; weigh the finished pieces when they are there.';
export const noHabitTradeKnownFamily = 'No habit of the trade is known for this family.';
export const to = (low: string, high: string, unit: string) => `${low} to ${high} ${unit}`;
export const usualFamilyCommonPracticeNo = (said: string) =>
  `Usual for this family: ${said}. Common practice, no source.`;
export const theirOwnWorksheet = 'their own worksheet';
export const mouldsAreCountedOn = (a: Slot): Slot => ['Moulds are counted on ', a, '.'];
export const finishedWeight = 'Finished weight';
export const cannotTellNotWeighedNotPlanned = 'Cannot tell: not weighed and not planned';
export const whatScaleShowedAfterChilling =
  'What the scale showed after chilling, all moulds together; before that, what the plan expects after its losses. Derived.';
export const slicesAMould = 'Slices, a mould';
export const hereLessTwoEndsByAnd = (lengthMm: string, thickness: string) =>
  ` Here (${lengthMm} less two ends) by ${thickness} and the blade.`;
export const commonPracticeNoSource = (slices: string, lengthMm: Slot): Slot => [
  slices,
  lengthMm,
  ' Common practice, no source.',
];
export const ofOneMould = 'Of one mould';
export const weight = 'Weight';
export const slices = 'Slices';
export const bothEnds = 'Both ends';
export const blade = 'Blade';
export const restTooThin = 'Rest, too thin';
export const oneMould = 'One mould';
export const aSliceWeighs = 'A slice weighs';
export const derived = (sliceG: string) => `${sliceG} Derived.`;
export const slicesInAll = 'Slices in all';
export const slicesMouldTimesMouldsDerived = 'Slices of a mould times the moulds. Derived.';
export const portions = 'Portions';
export const derived2 = (portions: string, computed: string) => `${portions} Derived. ${computed}`;
export const aPortionWeighs = 'A portion weighs';
export const aSliceTimesSlicesToA = 'A slice times slices to a portion.';
export const asYouWroteIt = 'As you wrote it.';
export const derived3 = (value: string) => `${value} Derived.`;
export const soldInAll = 'Sold in all';
export const portionsTimesWeightEndsCrumbs =
  'Portions times their weight. Ends, crumbs and rest are not in it. Derived.';
export const rest = (restG: string) => `${restG} rest.`;
export const slicesOf = (thicknessMm: string) => `slices of ${thicknessMm}`;
export const forAStarter = (starterG: string) => `${starterG} for a starter`;
export const forAMain = (mainG: string) => `${mainG} for a main`;

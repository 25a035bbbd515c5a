import type { Slot } from '../slot.ts';

export const fillEachMouldWith = 'Fill each mould with';
export const cannotTellYetMeasuresHeadspace =
  'Cannot tell yet: measures, headspace, lining or density are missing';
export const allOf = (count: number, name: string) => `All ${count} of ${name}`;
export const fillOfOneHowManyDerived = 'Fill of one × how many. Derived.';
export const wholeBatchFillsMouldAlone = 'The whole batch fills, of this mould alone';
export const andOver = (whole: number, leftoverG: string) => `${whole} and ${leftoverG} over`;
export const everythingBowlFillOneWhole =
  'Everything in the bowl ÷ the fill of one, in whole moulds, and what is left. Derived.';
export const sheetToCutForOneMould = 'Sheet to cut for one mould';
export const aboutFatAreaThickness093 = (fatLiningG: string) =>
  `About ${fatLiningG} of fat: area × thickness × 0.93 g/mL, offcuts on top. `;
export const acrossMouldUpBothWallsOver = (fatLiningG: Slot): Slot => [
  'Across the mould, up both walls and over the top, by its length with the ends. ',
  fatLiningG,
  'Common practice, no source.',
];
export const volumeUpHeadspaceLessLining =
  'Volume up to the headspace, less the lining, times the density of the raw mix. Derived.';
export const byWaterByItsMeasures = (calculatedBrimMl: string) =>
  `by water (${calculatedBrimMl} by its measures)`;
export const byItsInsideMeasures = 'by its inside measures';
export const leavingMmFreeItIsFilled = (headspaceMm: string) =>
  ` Leaving ${headspaceMm} mm free, it is filled`;
export const itIsFilled = ' It is filled';
export const mmDeep = (fillDepthMm: string) => `${fillDepthMm} mm deep`;
export const andTheLiningTakesMl = (liningMl: string) => `, and the lining takes ${liningMl} mL`;
export const toTheRimItHoldsOf = (
  brimMl: string,
  calculatedBrimMl: string,
  headspaceMm: string,
  fillDepthMm: string,
  liningMl: string,
  fillMl: string,
) =>
  `To the rim it holds ${brimMl} ${calculatedBrimMl}.${headspaceMm} ${fillDepthMm}${liningMl}: ${fillMl} of mix.`;
export const theWaterMeasureOutranksTheRule = 'The water measure outranks the rule. ';
export const geometryShapeDerivedHeadspace = (value: string) =>
  `${value}Geometry of the shape: derived. Headspace and density: common practice, no source.`;

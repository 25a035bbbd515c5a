export { type BloomConversion, bloomLinearG, bloomSquareRootG, convertBloom } from './bloom.ts';
export {
  AGAR_MELTS_C,
  AGAR_SETS_C,
  GELATINE_MELTS_C,
  GELATINE_SETS_C,
  JELLY_PER_CAVITY,
  jellyUnderCrustMl,
  POUR,
  SOAKING_WATER,
} from './fill-under-crust.ts';
export type { GeleeFindingId } from './finding-ids.ts';
export { FOOD_BLOOM } from './findings.ts';
export { newGeleeSlice } from './new-gelee.ts';
export { SHEETS, type SheetKind, sheetOf, sheetsFor } from './sheets.ts';
export type * from './slice.ts';
export { geleeStage } from './stage.ts';
export {
  AGAR_STRENGTH,
  gPerLOfOzPerGallon,
  STOCK_RATIOS,
  STRENGTH_BY_USE,
  STRONGEST_FRACTION,
  type StockRatio,
  type UseStrength,
} from './strength.ts';
export type { GeleeValues } from './values.ts';
export {
  ACID_BELOW_PH,
  ALCOHOL_ABOVE_FRACTION,
  SUGAR_ABOVE_FRACTION,
  type Weakening,
  weakeningOf,
} from './weakening.ts';

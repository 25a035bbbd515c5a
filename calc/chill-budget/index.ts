export {
  type HeatLot,
  heatOfLots,
  heatOfMix,
  iceInMeatG,
  type MixedLot,
  mixTempC,
  thawedHeatJK,
  workJkg,
} from './balance.ts';
export { FAT_MELTING_JKGK, fatMeltingJkg } from './fat-melting.ts';
export type { ChillBudgetFindingId } from './finding-ids.ts';
export {
  BACK_FAT,
  constantHeat,
  type HeatContent,
  LEAN,
  LEAN_FREEZES_C,
  meatHeat,
  trimOfFat,
  WATER_HEATS,
  type WaterHeats,
  WORKING_WATER_HEATS,
  waterHeat,
} from './heat-contents.ts';
export { excessHeatJ, iceNeededG } from './ice-needed.ts';
export {
  END_MIX_LIMIT_C,
  FAT_START_MOST_C,
  finenessOf,
  type MixFineness,
  PASS_STOP_C,
  RECHILL_C,
  START_MOST_C,
  TOO_HARD_C,
} from './limits.ts';
export { newChillBudgetSlice, newChillLot, newGrindPass } from './new-chill-budget.ts';
export type * from './slice.ts';
export { type ChillBudgetContext, chillBudgetStage } from './stage.ts';
export {
  STILL_FREEZER_FILM_WM2K,
  type TemperRefusal,
  temperInFreezer,
  temperRefusal,
} from './temper.ts';
export type { Tempering, TemperRequest } from './tempering.ts';
export { type LyingMeat, minutesToWarm } from './time-to-warm.ts';
export type { ChillBudgetValues, MixStep } from './values.ts';

export {
  ACCELERATOR_LIMITS,
  type AdditiveLimit,
  acceleratorLimit,
  BACON_ACCELERATOR,
  CITRATE_SHARE_FRACTION,
  MIXING_ORDER,
  OTHER_ACCELERATORS,
  PHOSPHATE_LIMIT,
  PUMPED_BACON_LEVELS,
} from './additive-limits.ts';
export {
  type BrineScale,
  type BrineStrength,
  baumeFromGravity,
  brineFreezesC,
  brineGravity,
  brineStrength,
  gravityFromBaume,
  LAW_PICKLE_LB_PER_GALLON,
  SALOMETER_SCALES,
  SATURATED_FRACTION,
  type SalometerScaleId,
  salometerDegrees,
  saltFromReading,
  saltFromSalometer,
  WATER_G_PER_ML,
  WATER_LB_PER_GALLON,
} from './brine-scales.ts';
export {
  BRINE_FREEZING,
  BRINE_FREEZING_SOURCE,
  BRINE_TABLE,
  BRINE_TABLE_SOURCES,
  type BrineRow,
} from './brine-table.ts';
export {
  equilibriumSalt,
  type SaltOutcome,
  type SharedWater,
  saltAtEquilibrium,
} from './equilibrium-salt.ts';
export { TIMED_FROM_FRACTION } from './figures.ts';
export type { BrineFinding, BrineFindingId } from './finding-ids.ts';
export { BRINE_LIFE_DAYS } from './findings.ts';
export { newBrineSlice } from './new-brine.ts';
export {
  equilibriumPpm,
  gainFraction,
  type ImmersionPpm,
  immersionPpm,
  picklePpm,
  pumpedPpm,
  worstCasePpm,
} from './nitrite-by-method.ts';
export {
  type BrineQuestion,
  type BrineRecipe,
  immersionRecipe,
  pickleRecipe,
  pickleSalt,
} from './recipe.ts';
export type * from './slice.ts';
export { brineStage } from './stage.ts';
export { type Uptake, type UptakeQuestion, uptakeOf } from './uptake.ts';
export type { BrineParts, BrineValues } from './values.ts';
export {
  awFromOsmotic,
  estimateWaterActivity,
  molality,
  osmoticCoefficient,
  saturatedSaltActivity,
  WATER_ACTIVITY_TABLE,
  type WaterActivityEstimate,
  type WaterActivityRow,
  waterActivityPitzer,
  waterActivityQuadratic,
} from './water-activity.ts';

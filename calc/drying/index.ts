export { type AfterDrying, afterDrying } from './after-drying.ts';
export {
  DEGREE_HOUR_TABLES,
  type DegreeHours,
  type DegreeHourTable,
  degreeHourLimit,
  degreeHours,
  degreeHourTable,
  type FermentationStretch,
  longestHours,
} from './degree-hours.ts';
export type { DryingFinding, DryingFindingId } from './finding-ids.ts';
export {
  lossForRatio,
  meetsClass,
  moistureProteinRatio,
  RATIO_CLASSES,
  type RatioClass,
} from './moisture-protein.ts';
export { newDryingSlice, newFermentationStep } from './new-drying.ts';
export type * from './slice.ts';
export { dryingStage } from './stage.ts';
export {
  TRICHINA_3A,
  TRICHINA_3B,
  TRICHINA_4,
  TRICHINA_MARK,
  TRICHINA_SALT,
  TRICHINA_SOURCE,
  type TrichinaDrying,
  type TrichinaSalt,
  trichinaDays,
  trichinaDrying,
  trichinaHoldPercent,
  trichinaSalt,
  trichinaSaltPercent,
} from './trichina.ts';
export type { DryingValues } from './values.ts';
export { WATER_ACTIVITY_LIMITS, type WaterActivityLimit } from './water-activity-limits.ts';

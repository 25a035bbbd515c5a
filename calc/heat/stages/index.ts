export { type BathBalance, bathBalance, bathEquilibriumC, evaporationKgM2S, type OvenBath } from './bath.ts';
export {
  airStage,
  bathStage,
  FILMS,
  type FilmRange,
  OVEN_VAPOUR_KPA,
  ovenPan,
  type PanMeasures,
  waterLevelMm,
  waterStage,
} from './defaults.ts';
export {
  type Course,
  courseAt,
  type HeatStage,
  type Medium,
  type StageEnd,
  type StageKind,
  type Water,
} from './stage.ts';
export { boilingPointC, evaporationHeatJkg, pressureAtKPa, SEA_LEVEL_KPA, saturationKPa } from './vapour.ts';

export { massAfterLoss, saltAfterLoss } from './after-loss.ts';
export { type CureTime, cureTime, diffusionDays, SALT_DIFFUSION_M2_PER_S } from './cure-time.ts';
export {
  COUNTRY_HAM_DAYS,
  CURING_TIME_RULES,
  type CuringTimeRule,
  type CuringTimeRuleId,
  curingDays,
  OTHER_CURING_HABITS,
} from './curing-times.ts';
export type { DryCureFinding, DryCureFindingId } from './finding-ids.ts';
export { THICK_MM } from './findings.ts';
export {
  type JudgedMuscle,
  judgeMuscle,
  type MuscleReason,
  nitrateVerdict,
  nitriteVerdicts,
  type Renamed,
  renamed,
} from './judge.ts';
export {
  coldFindings,
  doseFindings,
  GROSS_MUSCLE_PPM,
  gramsOnly,
  handlingFindings,
  limitFindings,
  type MuscleFindingCode,
  type MuscleFindingId,
  packFindings,
  scaleFindings,
  WARMEST_CURE_C,
} from './muscle-findings.ts';
export { newCuringSaltPack, newDryCurePiece, newDryCureSlice } from './new-dry-cure.ts';
export { nitriteHalfLifeHours } from './nitrite-half-life.ts';
export { type PackProblem, type PackReading, readPack } from './pack.ts';
export { ceilingOnMeat, type PiecePlan, type PieceQuestion, planPiece } from './piece-plan.ts';
export {
  type CureRoute,
  HIGHEST_WHOLE_MUSCLE_PPM,
  WHOLE_MUSCLE_RULE_SETS,
  type WholeMuscleKind,
  type WholeMuscleLimit,
  type WholeMuscleRuleSet,
  wholeMuscleLimits,
  wholeMuscleRuleSet,
} from './rule-sets/index.ts';
export { SKIN_FRACTION, type SkinFree, skinFreeMass } from './skin.ts';
export { slabCentreFraction, slabFourierAtCentre, slabMeanFraction } from './slab.ts';
export type * from './slice.ts';
export { dryCureStage } from './stage.ts';
export { dateAfter, turnDates } from './turn-dates.ts';
export type { DryCureValues, PieceValues } from './values.ts';
export { type WholeMuscleMass, wholeMuscleAmounts } from './whole-muscle-amounts.ts';

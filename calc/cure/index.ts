export type { CureAmounts, Span, UnboundedBecause } from './amounts.ts';
export { GROSS_ERROR_PPM, HIGHEST_CEILING_PPM } from './batch-findings.ts';
export { CARRIED_WORST_PPM, CARRIED_WORST_SOURCE, type CarriedNitrite } from './carried-nitrite.ts';
export { STRENGTH_RANGE } from './cure-line.ts';
export {
  type CuringSaltDose,
  type CuringSaltRefusal,
  type CuringSaltTarget,
  curingSaltForTarget,
} from './curing-salt-for-target.ts';
export { doseCeilingPpm, type LineDose } from './dose.ts';
export { exceeds } from './exceeds.ts';
export type { CureFinding, CureFindingId } from './finding-ids.ts';
export { FORMULA_WEIGHT } from './formula-weights.ts';
export { inLimitForm, limitAsSodiumNitrite } from './in-limit-form.ts';
export { type JudgedLimit, judgeLimit, type LimitReason } from './judge-limit.ts';
export { nitriteCeilingOfSalt } from './nitrite-ceiling-of-salt.ts';
export {
  nitrateIonFromPotassiumNitrate,
  nitrateIonFromSodiumNitrate,
  nitriteIonFromSodiumNitrite,
  potassiumNitriteFromSodiumNitrite,
  sodiumNitriteFromNitriteIon,
  sodiumNitriteFromPotassiumNitrite,
  sodiumNitriteFromSodiumNitrate,
} from './nitrite-forms.ts';
export { nitritePpm } from './nitrite-ppm.ts';
export { type MeasuredResidual, newResidualNitrite, readResidual } from './residual.ts';
export {
  CURE_RULE_SETS,
  type CureLimit,
  type CureReference,
  type CureRuleSet,
  cureRuleSet,
  type ExpressedAs,
  limitsFor,
  type ProductHeating,
  type WeightBasis,
} from './rule-sets/index.ts';
export { CODEX_LEFT, SHARED_ROWS } from './rule-sets/shared-rows.ts';
export { type OpenSaltAndCure, saltAndCureForTarget } from './salt-and-cure-for-target.ts';
export { saltToRaise } from './salt-to-raise.ts';
export type * from './slice.ts';
export { type CureContext, cureStage } from './stage.ts';
export { CURING_SALT_STRENGTHS, type CuringSaltStrength, nitriteOfAGramPerKg } from './strengths.ts';
export type { CuredFacts, CureValues, CureWeighing } from './values.ts';
export { judgeRuleSet, limitParams } from './verdicts.ts';
export { isWeighable, MIN_SCALE_STEPS, nearestStepG, stepBelowG, weighingErrorFraction } from './weighing.ts';

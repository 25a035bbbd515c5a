export type { CureAmounts, Span, UnboundedBecause } from './amounts.ts';
export {
  type CuringSaltDose,
  type CuringSaltRefusal,
  type CuringSaltTarget,
  curingSaltForTarget,
} from './curing-salt-for-target.ts';
export { exceeds } from './exceeds.ts';
export { FORMULA_WEIGHT } from './formula-weights.ts';
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
export { type PlainSalt, type PlainSaltNeed, plainSaltToAdd } from './plain-salt-to-add.ts';
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
export { type OpenSaltAndCure, saltAndCureForTarget } from './salt-and-cure-for-target.ts';
export { saltToRaise } from './salt-to-raise.ts';
export type * from './slice.ts';
export { waterPhaseSaltFraction } from './water-phase-salt.ts';
export { isWeighable, MIN_SCALE_STEPS, nearestStepG, stepBelowG, weighingErrorFraction } from './weighing.ts';

export { addedWaterFraction, largestShareG } from './added-water.ts';
export { concentratedFraction, remainingFraction } from './after-loss.ts';
export { type TwoTrimBlend, twoTrimBlend } from './blend.ts';
export type { FormulaFacts } from './facts.ts';
export {
  type Band,
  FAMILIES,
  FAMILY_MARK,
  FAMILY_SOURCE,
  type Family,
  type FamilyStart,
  familyOf,
  familyStart,
  type NamedShare,
  type NitriteHabit,
  type StartLine,
} from './families/index.ts';
export type { FormulaFinding, FormulaFindingId } from './finding-ids.ts';
export { type FinishedSlice, finishedSlice } from './finished.ts';
export {
  COMPONENTS,
  type Component,
  type CompositionFields,
  type CompositionOrigin,
  curingSaltNaClFraction,
  type KnownFraction,
  type LineComposition,
  lineComposition,
} from './line-composition.ts';
export { type LinedMix, linedMix } from './lined.ts';
export type { Contribution, Mix, MixComponent, MixLine } from './mix.ts';
export {
  NAMED_STANDARDS,
  type NamedStandard,
  namedStandardOf,
  type StandardLimit,
  type StandardQuality,
} from './named-standards.ts';
export { isInBowl, isMeat } from './parts.ts';
export type { PlainSaltNeed } from './plain-salt.ts';
export { saltOnWaterFraction } from './salt-on-water.ts';
export {
  type FillNeed,
  mixForFillG,
  type Scaled,
  type ScaleProblem,
  scaleFormula,
  scaleToFill,
  scaleToMeatBlock,
  scaleToTotal,
} from './scale.ts';
export type * from './slice.ts';
export { type FormulaContext, type FormulaValues, formulaStage } from './stage.ts';
export { cookedHamName, keepsCookedSausageStandard, proteinFatFreePercent } from './us-standards.ts';

export { type BlendPart, blendParts } from './blend-parts.ts';
export { BLEND_STYLES, type BlendStyle, blendStyleOf, type StylePart } from './blend-styles.ts';
export { type DosedSpice, type SpiceTotal, spiceTotals } from './ceilings.ts';
export type { SeasoningContext } from './context.ts';
export type { SeasoningFindingId } from './finding-ids.ts';
export { GROUND_KEEPS_DAYS } from './findings.ts';
export { doseOf, inForm, type KnownDose, MACE_PER_NUTMEG, wholeToGrindG } from './forms.ts';
export {
  blendOfStyle,
  newBlendItem,
  newLooseSpice,
  newSeasoningBlend,
  newSeasoningSlice,
} from './new-seasoning.ts';
export type * from './slice.ts';
export type { Dose, Spice } from './spice.ts';
export { SPICES } from './spice-table.ts';
export { SPICE_MARK, SPICE_SOURCE, spiceOf } from './spices.ts';
export { seasoningStage } from './stage.ts';
export { strongAromaticG } from './strong-aromatics.ts';
export type { BlendWeights, SeasoningValues, SeasoningWeight } from './values.ts';
export {
  DILUTION,
  diluteInSalt,
  LEAST_SPICE_STEPS,
  type SaltDilution,
  spiceWeighable,
} from './weigh-small.ts';

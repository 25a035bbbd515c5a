export { ALCOHOL_KEPT, ALCOHOL_KEPT_SOURCE, type AlcoholKept } from './alcohol-kept.ts';
export {
  ALLERGEN_CLASSES,
  type AllergenClass,
  allergenClassOf,
  emphasise,
  type TextPart,
} from './allergen-classes.ts';
export { type AudienceFacts, type AudienceWarning, audienceWarnings } from './audience.ts';
export type { CarriedFood, CarriedIngredient } from './carried.ts';
export { DAILY_VALUES_1993, DAILY_VALUES_2016, type DailyValues } from './daily-values.ts';
export { dateOfStamp, isLater, useByDate } from './dates.ts';
export { type DeclaredFigure, declareFigure } from './declare.ts';
export { atwaterKcal, EU_ENERGY, euEnergy, US_ENERGY, usEnergy } from './energy.ts';
export type { LabelFinding, LabelFindingId } from './finding-ids.ts';
export {
  ADDED_WATER,
  FOOD_CODE_DAYS,
  FOOD_CODE_STORE_C,
  HURDLE_SALT,
  SEALED_DAYS,
  SEALED_STORE_C,
} from './findings.ts';
export type { ListedIngredient } from './ingredient-list.ts';
export {
  MEAT_LIMITS,
  MEAT_LIMITS_SOURCE,
  MEAT_METHOD_SOURCE,
  type MeatClass,
  type MeatContent,
  meatContent,
} from './meat-content.ts';
export { type MeatGroup, meatGroups } from './meat-groups.ts';
export { newLabelExtra, newLabelLine, newLabelSlice } from './new-label.ts';
export type { Nutrient, PerHundred } from './nutrients.ts';
export { type Amount, type Nutrition, type NutritionPart, nutritionOf } from './nutrition.ts';
export {
  type EuRowId,
  euTable,
  type PanelRow,
  saltEquivalent,
  type UsRow,
  type UsRowId,
  usPanel,
} from './panels.ts';
export type { DetailsTable, LabelPart } from './parts.ts';
export { perHundredOfRow } from './per-hundred.ts';
export { collagenByCut, PUBLISHED_COLLAGEN, publishedCollagenOf } from './published-collagen.ts';
export { addedWaterShare, type Quid, quidOf } from './quid.ts';
export {
  type Declared,
  EU_ROUNDING,
  ROUNDING_RULE_SETS,
  type RoundingBand,
  type RoundingRule,
  type RoundingRuleSet,
  US_ROUNDING,
} from './rounding-rules.ts';
export { REFERENCE_AMOUNTS, type ReferenceAmount, type Servings, servingsOf } from './servings.ts';
export type * from './slice.ts';
export { labelStage } from './stage.ts';
export { STAND_INS } from './stand-ins.ts';
export type { DeclaredQuantity, LabelContext, LabelValues } from './values.ts';

/**
 * What a label may ask of a food, per 100 g, in the unit of the label. `carbohydrateG` is total carbohydrate with
 * fibre, as the United States count it; `availableCarbohydrateG` leaves fibre out, as the EU does. `proteinNx625G` is
 * nitrogen × 6.25 for every food (EU); `proteinG` uses the factor of the food.
 */
export const NUTRIENTS = [
  'fatG',
  'saturatesG',
  'carbohydrateG',
  'availableCarbohydrateG',
  'fibreG',
  'sugarsG',
  'addedSugarsG',
  'proteinG',
  'proteinNx625G',
  'alcoholG',
  'sodiumMg',
  'cholesterolMg',
  'calciumMg',
  'ironMg',
  'potassiumMg',
  'vitaminDUg',
] as const;
export type Nutrient = (typeof NUTRIENTS)[number];

/** A food per 100 g. Null is not known, never none. */
export type PerHundred = Readonly<Record<Nutrient, number | null>>;

/** Nothing known at all. */
export const NOTHING_KNOWN: PerHundred = Object.freeze(
  Object.fromEntries(NUTRIENTS.map((name) => [name, null])) as Record<Nutrient, null>,
);

/** None of anything: pure water, and salts but for their sodium. */
export const NONE_OF_ALL: PerHundred = Object.freeze(
  Object.fromEntries(NUTRIENTS.map((name) => [name, 0])) as Record<Nutrient, number>,
);

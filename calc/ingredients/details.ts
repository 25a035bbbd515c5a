import { numberCell } from './read-table.ts';

/** Cells of the details file that are words. */
const WORDS = [
  'sourceDescription',
  'refuse',
  'densityBasis',
  'measures',
  'euMeatClass',
  'euCountsAsMeat',
  'flags',
] as const;

/** Cells that are numbers, per 100 g edible part unless the name says otherwise. */
const NUMBERS = [
  'energyKcal',
  'energyKjEu',
  'energyKcalEu',
  'nitrogenFactor',
  'proteinNx625G',
  'saturatedG',
  'transG',
  'carbohydrateTotalG',
  'fibreG',
  'carbohydrateAvailableG',
  'sugarsG',
  'addedSugarsG',
  'polyolsG',
  'alcoholG',
  'organicAcidsG',
  'ashG',
  'cholesterolMg',
  'calciumMg',
  'ironMg',
  'potassiumMg',
  'vitaminDUg',
  'hydroxyprolineG',
  'atwaterProtein',
  'atwaterFat',
  'atwaterCarbohydrate',
  'refusePercent',
  'densityGPerMl',
  'modelDensityGPerMl',
] as const;

/**
 * The rest of a row as its source prints it. `refusePercent` is the waste from purchase to edible part;
 * `densityGPerMl` is a bulk value from household measures, `modelDensityGPerMl` an air-free one from composition.
 */
export type IngredientDetails = Readonly<
  Record<(typeof WORDS)[number], string> & Record<(typeof NUMBERS)[number], number | null>
>;

/** A row of the details file. */
export function toDetails(row: Readonly<Record<string, string>>): IngredientDetails {
  const words = Object.fromEntries(WORDS.map((name) => [name, row[name] ?? '']));
  const numbers = Object.fromEntries(NUMBERS.map((name) => [name, numberCell(row[name])]));
  return { ...words, ...numbers } as IngredientDetails;
}

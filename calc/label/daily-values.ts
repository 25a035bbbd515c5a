import type { SourceId } from '../sources/index.ts';

/** Nutrients of the United States panel that carry a per cent of a daily value. */
export type DailyNutrient =
  | 'fatG'
  | 'saturatesG'
  | 'cholesterolMg'
  | 'carbohydrateG'
  | 'sodiumMg'
  | 'fibreG'
  | 'addedSugarsG'
  | 'vitaminDUg'
  | 'calciumMg'
  | 'ironMg'
  | 'potassiumMg';

export interface DailyValues {
  readonly source: SourceId;
  readonly values: Readonly<Partial<Record<DailyNutrient, number>>>;
}

/** 21 CFR 101.9(c)(8) and (9), 2016. Total sugars, trans fat and energy have none; protein's is not printed here. */
export const DAILY_VALUES_2016: DailyValues = {
  source: 'us-daily-values-2016',
  values: {
    fatG: 78,
    saturatesG: 20,
    cholesterolMg: 300,
    carbohydrateG: 275,
    sodiumMg: 2300,
    fibreG: 28,
    addedSugarsG: 50,
    vitaminDUg: 20,
    calciumMg: 1300,
    ironMg: 18,
    potassiumMg: 4700,
  },
};

/** 9 CFR 317.309, still the text for meat and poultry products when last looked at. */
export const DAILY_VALUES_1993: DailyValues = {
  source: 'us-daily-values-1993',
  values: {
    fatG: 65,
    saturatesG: 20,
    cholesterolMg: 300,
    carbohydrateG: 300,
    sodiumMg: 2400,
    fibreG: 25,
    calciumMg: 1000,
    ironMg: 18,
    potassiumMg: 3500,
  },
};

/** Minerals and vitamins round their per cent in steps of 2, 5 and 10. */
export const MINERALS: readonly DailyNutrient[] = ['vitaminDUg', 'calciumMg', 'ironMg', 'potassiumMg'];

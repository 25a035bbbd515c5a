import { SALT_PER_SODIUM } from '../ingredients/index.ts';
import {
  DAILY_VALUES_1993,
  DAILY_VALUES_2016,
  type DailyNutrient,
  type DailyValues,
  MINERALS,
} from './daily-values.ts';
import { type DeclaredFigure, declareFigure, sameFigure } from './declare.ts';
import { euEnergy, usEnergy } from './energy.ts';
import type { Amount, Nutrition } from './nutrition.ts';
import { EU_ROUNDING, type RoundingRule, US_ROUNDING } from './rounding-rules.ts';

const MG_PER_G = 1000;
const PER_100_G = 100;

/** One line of a table: what it is, exact and as declared. */
export interface PanelRow<Id extends string> {
  readonly id: Id;
  /** Exact, in the unit of the rule; with bounds while something is unknown. */
  readonly exact: Amount;
  /** Null: cannot tell. */
  readonly declared: DeclaredFigure | null;
}

export type UsRowId =
  | 'energy'
  | 'fat'
  | 'saturates'
  | 'cholesterol'
  | 'sodium'
  | 'carbohydrate'
  | 'fibre'
  | 'sugars'
  | 'addedSugars'
  | 'protein'
  | 'vitaminD'
  | 'calcium'
  | 'iron'
  | 'potassium';

export interface UsRow extends PanelRow<UsRowId> {
  /** Per cent of the daily values of 2016, and of those before; null: none, or cannot tell. */
  readonly percentDv2016: number | null;
  readonly percentDv1993: number | null;
}

export type EuRowId =
  | 'energyKj'
  | 'energyKcal'
  | 'fat'
  | 'saturates'
  | 'carbohydrate'
  | 'sugars'
  | 'fibre'
  | 'protein'
  | 'salt';

function times(amount: Amount, factor: number): Amount {
  const scale = (value: number | null) => (value === null ? null : value * factor);
  return { ...amount, value: scale(amount.value), min: scale(amount.min), max: scale(amount.max) };
}

/** Declares an amount; one that is not known all the same where both its bounds print alike. */
function declareAmount(amount: Amount, rule: RoundingRule): DeclaredFigure | null {
  if (amount.value !== null) return declareFigure(amount.value, rule);
  if (amount.min === null || amount.max === null) return null;
  const least = declareFigure(amount.min, rule);
  return sameFigure(least, declareFigure(amount.max, rule)) ? least : null;
}

function percentDv(amount: Amount, nutrient: DailyNutrient, { values }: DailyValues): number | null {
  const daily = values[nutrient];
  if (daily === undefined) return null;
  const rule = MINERALS.includes(nutrient) ? US_ROUNDING.percentDvMineral : US_ROUNDING.percentDv;
  return declareAmount(times(amount, PER_100_G / daily), rule)?.value ?? null;
}

const US_ROWS: readonly (readonly [UsRowId, DailyNutrient | 'sugarsG' | 'proteinG', RoundingRule])[] = [
  ['fat', 'fatG', US_ROUNDING.fat],
  ['saturates', 'saturatesG', US_ROUNDING.fat],
  ['cholesterol', 'cholesterolMg', US_ROUNDING.cholesterol],
  ['sodium', 'sodiumMg', US_ROUNDING.sodium],
  ['carbohydrate', 'carbohydrateG', US_ROUNDING.carbohydrate],
  ['fibre', 'fibreG', US_ROUNDING.carbohydrate],
  ['sugars', 'sugarsG', US_ROUNDING.carbohydrate],
  ['addedSugars', 'addedSugarsG', US_ROUNDING.addedSugars],
  ['protein', 'proteinG', US_ROUNDING.protein],
  ['vitaminD', 'vitaminDUg', US_ROUNDING.vitaminD],
  ['calcium', 'calciumMg', US_ROUNDING.calciumPotassium],
  ['iron', 'ironMg', US_ROUNDING.iron],
  ['potassium', 'potassiumMg', US_ROUNDING.calciumPotassium],
];

/**
 * The United States panel for one serving: 21 CFR 101.9(c) and (d). Everything is rounded from the exact amount; per
 * cent of daily value too. Energy is 4-4-9 with alcohol at 7.
 */
export function usPanel(nutrition: Nutrition, servingG: number): UsRow[] {
  const factor = servingG / PER_100_G;
  const energy = times(usEnergy(nutrition), factor);
  const first: UsRow = {
    id: 'energy',
    exact: energy,
    declared: declareAmount(energy, US_ROUNDING.energy),
    percentDv2016: null,
    percentDv1993: null,
  };
  const rows = US_ROWS.map(([id, nutrient, rule]): UsRow => {
    const exact = times(nutrition[nutrient], factor);
    const daily = nutrient === 'sugarsG' || nutrient === 'proteinG' ? null : nutrient;
    return {
      id,
      exact,
      declared: declareAmount(exact, rule),
      percentDv2016: daily === null ? null : percentDv(exact, daily, DAILY_VALUES_2016),
      percentDv1993: daily === null ? null : percentDv(exact, daily, DAILY_VALUES_1993),
    };
  });
  return [first, ...rows];
}

/** Salt as labels of the EU count it: all sodium × 2.5, from curing salt, phosphate and ascorbate too. */
export function saltEquivalent(sodiumMg: Amount): Amount {
  return times(sodiumMg, SALT_PER_SODIUM / MG_PER_G);
}

/**
 * The European table per 100 g, in the order of Annex XV with fibre: Regulation (EU) No 1169/2011, rounded by the
 * Commission's guidance of December 2012.
 */
export function euTable(nutrition: Nutrition): PanelRow<EuRowId>[] {
  const { kj, kcal } = euEnergy(nutrition);
  const row = (id: EuRowId, exact: Amount, rule: RoundingRule): PanelRow<EuRowId> => ({
    id,
    exact,
    declared: declareAmount(exact, rule),
  });
  return [
    row('energyKj', kj, EU_ROUNDING.energyKj),
    row('energyKcal', kcal, EU_ROUNDING.energyKcal),
    row('fat', nutrition.fatG, EU_ROUNDING.grams),
    row('saturates', nutrition.saturatesG, EU_ROUNDING.saturates),
    row('carbohydrate', nutrition.availableCarbohydrateG, EU_ROUNDING.grams),
    row('sugars', nutrition.sugarsG, EU_ROUNDING.grams),
    row('fibre', nutrition.fibreG, EU_ROUNDING.grams),
    row('protein', nutrition.proteinNx625G, EU_ROUNDING.grams),
    row('salt', saltEquivalent(nutrition.sodiumMg), EU_ROUNDING.salt),
  ];
}

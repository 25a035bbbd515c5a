import type { Mark, SourceId } from '../sources/index.ts';

/** How a value of one band is declared. A half goes up. */
export type Declared =
  | { readonly kind: 'zero' }
  /** A phrase in the place of a figure: "less than" so much; or 0, as the maker likes. */
  | { readonly kind: 'words'; readonly text: string; readonly lessThan: number; readonly orZero: boolean }
  | { readonly kind: 'nearest'; readonly step: number };

/** One band of a rule: from the end of the band before it up to `to`. The last one has no end. */
export interface RoundingBand {
  readonly to: number | null;
  /** The end itself still belongs to this band. */
  readonly toIncluded: boolean;
  readonly declared: Declared;
}

export type RoundingUnit = 'kcal' | 'kJ' | 'g' | 'mg' | 'µg' | '%';

export interface RoundingRule {
  readonly id: string;
  /** What it rounds, in words. */
  readonly nutrients: string;
  readonly unit: RoundingUnit;
  readonly bands: readonly RoundingBand[];
  /** Paragraph of the rule. */
  readonly cite: string;
  readonly mark: Mark;
}

export interface RoundingRuleSet {
  readonly id: 'us' | 'eu';
  readonly jurisdiction: string;
  readonly title: string;
  readonly per: string;
  readonly sources: readonly SourceId[];
  readonly rules: readonly RoundingRule[];
}

const under = (to: number, declared: Declared): RoundingBand => ({ to, toIncluded: false, declared });
const upTo = (to: number, declared: Declared): RoundingBand => ({ to, toIncluded: true, declared });
const above = (declared: Declared): RoundingBand => ({ to: null, toIncluded: false, declared });
const ZERO: Declared = { kind: 'zero' };
const nearest = (step: number): Declared => ({ kind: 'nearest', step });
const lessThan = (figure: number, unit: RoundingUnit): Declared => ({
  kind: 'words',
  text: `less than ${figure} ${unit}`,
  lessThan: figure,
  orZero: false,
});
const zeroOrLess = (figure: number): Declared => ({
  kind: 'words',
  text: `0 g or <${figure} g`,
  lessThan: figure,
  orZero: true,
});

const rule =
  (mark: Mark) =>
  (
    id: string,
    nutrients: string,
    unit: RoundingUnit,
    cite: string,
    ...bands: RoundingBand[]
  ): RoundingRule => ({ id, nutrients, unit, bands, cite, mark });
const read = rule('confirmed');
const remembered = rule('memory');

const WHOLE_GRAMS = [under(0.5, ZERO), under(1, lessThan(1, 'g')), above(nearest(1))];

/**
 * Rounding of the United States panel, per serving: 21 CFR 101.9(c) and (d), as tabled in the Food Labeling Guide,
 * appendix H (October 2009). Calcium and potassium to ten milligrams and added sugars are from memory, as is that
 * halves go up.
 */
export const US_ROUNDING = {
  energy: read(
    'energy',
    'Calories',
    'kcal',
    '101.9(c)(1)',
    under(5, ZERO),
    upTo(50, nearest(5)),
    above(nearest(10)),
  ),
  fat: read(
    'fat',
    'Fat: total, saturated, trans and other',
    'g',
    '101.9(c)(2)',
    under(0.5, ZERO),
    under(5, nearest(0.5)),
    above(nearest(1)),
  ),
  cholesterol: read(
    'cholesterol',
    'Cholesterol',
    'mg',
    '101.9(c)(3)',
    under(2, ZERO),
    upTo(5, lessThan(5, 'mg')),
    above(nearest(5)),
  ),
  sodium: read(
    'sodium',
    'Sodium',
    'mg',
    '101.9(c)(4)',
    under(5, ZERO),
    upTo(140, nearest(5)),
    above(nearest(10)),
  ),
  carbohydrate: read('carbohydrate', 'Carbohydrate, fibre, sugars', 'g', '101.9(c)(6)', ...WHOLE_GRAMS),
  addedSugars: remembered('addedSugars', 'Added sugars', 'g', '101.9(c)(6)(iii)', ...WHOLE_GRAMS),
  protein: read('protein', 'Protein', 'g', '101.9(c)(7)', ...WHOLE_GRAMS),
  vitaminD: read('vitaminD', 'Vitamin D', 'µg', '101.9(c)(8)(ii)', above(nearest(0.1))),
  iron: read('iron', 'Iron', 'mg', '101.9(c)(8)(ii)', above(nearest(0.1))),
  calciumPotassium: remembered(
    'calciumPotassium',
    'Calcium, potassium',
    'mg',
    'guidance of December 2019',
    above(nearest(10)),
  ),
  percentDvMineral: read(
    'percentDvMineral',
    'Per cent of daily value: vitamins and minerals',
    '%',
    '101.9(c)(8)(iii)',
    under(2, ZERO),
    upTo(10, nearest(2)),
    upTo(50, nearest(5)),
    above(nearest(10)),
  ),
  percentDv: read(
    'percentDv',
    'Per cent of daily value: the rest',
    '%',
    '101.9(d)(7)(ii)',
    above(nearest(1)),
  ),
} as const satisfies Record<string, RoundingRule>;

/** Rounding of the European table, per 100 g: guidance of the Commission, December 2012. */
export const EU_ROUNDING = {
  energyKj: read('energyKj', 'Energy', 'kJ', 'energy', above(nearest(1))),
  energyKcal: read('energyKcal', 'Energy', 'kcal', 'energy', above(nearest(1))),
  grams: read(
    'grams',
    'Fat, carbohydrate, sugars, protein, fibre, polyols, starch',
    'g',
    'other nutrients',
    upTo(0.5, zeroOrLess(0.5)),
    under(10, nearest(0.1)),
    above(nearest(1)),
  ),
  saturates: read(
    'saturates',
    'Saturates, mono- and polyunsaturates',
    'g',
    'fatty acids',
    upTo(0.1, zeroOrLess(0.1)),
    under(10, nearest(0.1)),
    above(nearest(1)),
  ),
  salt: read(
    'salt',
    'Salt',
    'g',
    'salt',
    upTo(0.0125, zeroOrLess(0.01)),
    under(1, nearest(0.01)),
    above(nearest(0.1)),
  ),
} as const satisfies Record<string, RoundingRule>;

/** Both, as the book of tables shows them. */
export const ROUNDING_RULE_SETS: readonly RoundingRuleSet[] = [
  {
    id: 'us',
    jurisdiction: 'United States',
    title: 'nutrition facts panel',
    per: 'one serving',
    sources: ['us-21-cfr-101-9'],
    rules: Object.values(US_ROUNDING),
  },
  {
    id: 'eu',
    jurisdiction: 'European Union and United Kingdom',
    title: 'nutrition table',
    per: '100 g',
    sources: ['eu-rounding-2012'],
    rules: Object.values(EU_ROUNDING),
  },
];

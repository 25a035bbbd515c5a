import { BACON_ACCELERATOR } from '@larderwright/calc/brine';
import { CASING_MARK } from '@larderwright/calc/casings';
import { SKIN_FRACTION, THICK_MM } from '@larderwright/calc/dry-cure';
import { ADDED_WATER, FOOD_CODE_DAYS, MEAT_LIMITS, MEAT_LIMITS_SOURCE } from '@larderwright/calc/label';
import { USUAL_END_LOSS } from '@larderwright/calc/plan';
import { LATE_ENTRY_MIN } from '@larderwright/calc/probe-log';
import type { Figure } from './figure.ts';
import {
  CURED_BY_THICKNESS,
  cookLoss,
  curedCooling,
  DAYS_BY_THICKNESS,
  familyHas,
  muscleLimit,
  namedShare,
  ofFraction,
  ofRange,
  pressure,
  sliced,
  soaking,
  spareCasing,
} from './from-calc.ts';

const CURED_COOLING = curedCooling('uk-large-cured');

/** Sausages, fresh and cooked. */
const sausages = {
  'sausage-salt': familyHas('fresh-sausage', 'salt'),
  'sausage-fat': familyHas('fresh-sausage', 'chemicalFat'),
  'sausage-keep': { value: 4, unit: 'C', bound: 'at-most', mark: 'memory', source: 'eu-853-2004' },
  'sausage-pork-uk': namedShare('fresh-sausage', 'pork sausage', 'pork, by the definition of meat'),
  'sausage-fat-us': namedShare('fresh-sausage', 'fresh pork sausage', 'fat'),
  'casing-soak': { value: soaking('sheep-22-24', 'soakMin'), unit: 'min', mark: CASING_MARK },
  'casing-soak-temp': { value: soaking('sheep-22-24', 'soakC'), unit: 'C', mark: CASING_MARK },
  'casing-spare': spareCasing('natural'),
  'casing-fill': { value: [90, 95], unit: '%', mark: 'common-practice' },
  'casing-example-batch': { value: 10, unit: 'kg', mark: 'derived' },
  'casing-example-metre': { value: 0.88, unit: 'kg', mark: 'derived' },
  'casing-example-spare': { value: 10, unit: '%', mark: 'derived' },
  'casing-example': { value: 12.5, unit: 'm', mark: 'derived' },
  'cooked-salt': familyHas('emulsified-sausage', 'salt'),
  'cooked-fat-us': namedShare('emulsified-sausage', 'frankfurter', 'fat, in the finished product'),
  'cooked-fat-water-us': namedShare(
    'emulsified-sausage',
    'frankfurter',
    'fat and added water together, in the finished product',
  ),
  'cooked-core': { value: [68, 72], unit: 'C', mark: 'common-practice' },
  'cooked-poach': { value: [75, 78], unit: 'C', mark: 'common-practice' },
  'cooked-smoke': { value: [50, 78], unit: 'C', mark: 'common-practice' },
  'shower-to': { value: 30, unit: 'C', mark: 'common-practice' },
  'blood-share': { value: [30, 45], unit: '%', mark: 'common-practice' },
  'blood-core': { value: [72, 75], unit: 'C', mark: 'common-practice' },
  'blood-crumbles': { value: 80, unit: 'C', bound: 'above', mark: 'common-practice' },
  'white-pudding-salt': familyHas('white-pudding', 'salt'),
} as const satisfies Record<string, Figure>;

/** Bacon, ham, dried muscle. */
const cures = {
  'bacon-salt': familyHas('dry-bacon', 'salt'),
  'bacon-us-dry': muscleLimit('us-federal', 'us-bacon-dry-cured', { bound: 'at-most' }),
  'bacon-us-pumped': muscleLimit('us-federal', 'us-bacon-pumped'),
  'bacon-us-ascorbate': {
    value: Math.round(BACON_ACCELERATOR.valueFraction * 1e6),
    unit: 'mg/kg',
    mark: BACON_ACCELERATOR.mark,
    source: BACON_ACCELERATOR.source,
  },
  'bacon-skin': ofFraction(SKIN_FRACTION),
  'cure-day-depth': {
    value: Math.round(1 / DAYS_BY_THICKNESS.perUnit),
    unit: 'mm',
    mark: DAYS_BY_THICKNESS.mark,
  },
  'cure-days-extra': { value: DAYS_BY_THICKNESS.add, unit: 'd', mark: DAYS_BY_THICKNESS.mark },
  'cure-rule-range': CURED_BY_THICKNESS,
  'bacon-pellicle': { value: [12, 24], unit: 'h', mark: 'common-practice' },
  'belly-example': { value: 2.5, unit: 'kg', mark: 'derived' },
  'belly-example-strength': { value: 6.25, unit: '%', mark: 'derived' },
  'belly-example-cure': { value: 4.8, unit: 'g', mark: 'derived' },
  'belly-example-aim': { value: 2.5, unit: '%', mark: 'derived' },
  'belly-example-plain': { value: 58, unit: 'g', mark: 'derived' },
  'ham-salt': familyHas('cooked-ham', 'salt'),
  'ham-pump': { value: [8, 20], unit: '%', mark: 'common-practice' },
  'ham-grid': { value: [30, 40], unit: 'mm', mark: 'common-practice' },
  'ham-inject-above': { value: THICK_MM, unit: 'mm', bound: 'above', mark: 'common-practice' },
  'ham-equalise': { value: [24, 72], unit: 'h', mark: 'common-practice' },
  'ham-core': { value: [68, 70], unit: 'C', mark: 'common-practice' },
  'ham-box': pressure('ham-box'),
  'ham-loss': { value: [8, 15], unit: '%', mark: 'common-practice' },
  'ham-slice': sliced('cooked-ham', 'thicknessMm'),
  'cured-nitrite': CURED_COOLING.nitrite,
  'cured-salt-water': CURED_COOLING.salt,
  'dried-salt': familyHas('dried-muscle', 'salt'),
  'dried-loss': cookLoss('dried-muscle'),
  'dried-damp': { value: [75, 82], unit: '%', mark: 'common-practice' },
  'dried-damp-hard': { value: 65, unit: '%', bound: 'below', mark: 'common-practice' },
  'dried-room': { value: [12, 16], unit: 'C', mark: 'common-practice' },
  'dried-aw': { value: [0.9, 0.92], unit: '', mark: 'common-practice' },
  'dried-example-salt': { value: 3, unit: '%', mark: 'derived' },
  'dried-example-loss': { value: 35, unit: '%', mark: 'derived' },
  'dried-example-after': { value: 4.6, unit: '%', mark: 'derived' },
} as const satisfies Record<string, Figure>;

/** Slicing, date, price, records. */
const selling = {
  'cut-temp': { value: [2, 4], unit: 'C', mark: 'common-practice' },
  'slice-country': sliced('country-terrine', 'thicknessMm'),
  'slice-fine': sliced('straight-terrine', 'thicknessMm'),
  'slice-crust': sliced('en-croute', 'thicknessMm'),
  'slice-ends': { value: [8, 15], unit: 'mm', mark: 'common-practice' },
  'slice-crumbs': ofRange(USUAL_END_LOSS),
  'slice-example': { value: 12, unit: 'mm', mark: 'derived' },
  'slice-example-block': { value: 290, unit: 'mm', mark: 'derived' },
  'slice-example-end': { value: 10, unit: 'mm', mark: 'derived' },
  'portion-first': sliced('country-terrine', 'starterG'),
  'portion-main': sliced('country-terrine', 'mainG'),
  'portion-buffet': { value: [30, 40], unit: 'g', mark: 'common-practice' },
  'date-us': {
    value: FOOD_CODE_DAYS,
    unit: 'd',
    bound: 'at-most',
    mark: 'confirmed',
    source: 'us-food-code-3-501-17',
  },
  'water-declared': ofFraction(ADDED_WATER, { bound: 'above', mark: 'memory', source: 'eu-1169-2011' }),
  'meat-fat-pork': ofFraction(MEAT_LIMITS.pork.fatFraction, {
    bound: 'at-most',
    mark: 'confirmed',
    source: MEAT_LIMITS_SOURCE,
  }),
  'meat-fat-birds': ofFraction(MEAT_LIMITS['bird-rabbit'].fatFraction, {
    bound: 'at-most',
    mark: 'confirmed',
    source: MEAT_LIMITS_SOURCE,
  }),
  'price-margin': { value: 70, unit: '%', mark: 'derived' },
  'share-example': { value: 114, unit: 'g', mark: 'derived' },
  'share-of': { value: 100, unit: 'g', mark: 'derived' },
  'yield-example': { value: 87.5, unit: '%', mark: 'derived' },
  'record-keep': { value: 24, unit: 'months', mark: 'common-practice' },
  'review-every': { value: 12, unit: 'months', bound: 'at-most', mark: 'common-practice' },
  'entry-late': { value: LATE_ENTRY_MIN, unit: 'min', bound: 'above', mark: 'common-practice' },
  'verify-within': { value: 7, unit: 'd', bound: 'at-most', mark: 'common-practice' },
  'cure-weigh-gap': { value: 5, unit: '%', mark: 'common-practice' },
} as const satisfies Record<string, Figure>;

/** Sausages and cures; slicing, dating, pricing and records. */
export const curedAndSoldFigures = { ...sausages, ...cures, ...selling } as const;

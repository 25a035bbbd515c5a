import { PANADE_C } from '@larderwright/calc/binder';
import { END_MIX_LIMIT_C, PASS_STOP_C } from '@larderwright/calc/chill-budget';
import type { Figure } from './figure.ts';
import { cookLoss, familyHas, familyPart, pressCore, pressHours, pressure } from './from-calc.ts';

/** Mixing, filling and pressing. Ranges of the trade, never limits. */
export const formulaFigures = {
  'meat-temper': { value: [-1, 1], unit: 'C', mark: 'common-practice' },
  'fat-temper': { value: [-4, -2], unit: 'C', mark: 'common-practice' },
  'mix-end-country': { value: END_MIX_LIMIT_C.coarse, unit: 'C', bound: 'at-most', mark: 'common-practice' },
  'grind-stop': { value: PASS_STOP_C, unit: 'C', bound: 'above', mark: 'common-practice' },
  'liquid-cold': { value: PANADE_C.most, unit: 'C', bound: 'at-most', mark: 'common-practice' },
  'salt-country': familyHas('country-terrine', 'salt'),
  'fat-country': familyHas('country-terrine', 'chemicalFat'),
  'liver-country': familyPart('country-terrine', 'liver'),
  'liver-pasty': { value: 30, unit: '%', bound: 'above', mark: 'common-practice' },
  'egg-country': familyPart('country-terrine', 'egg'),
  'garnish-country': familyPart('country-terrine', 'garnish'),
  'plate-coarse': { value: [6, 10], unit: 'mm', mark: 'common-practice' },
  'headspace-open': { value: [8, 12], unit: 'mm', mark: 'common-practice' },
  'loss-country': cookLoss('country-terrine'),
  'poach-sample': { value: [30, 50], unit: 'g', mark: 'common-practice' },
  'serve-terrine': { value: [10, 14], unit: 'C', mark: 'common-practice' },
  'rest-flavour': { value: [2, 4], unit: 'd', mark: 'common-practice' },
  'cure-rest': { value: [12, 24], unit: 'h', mark: 'common-practice' },
  'press-country': pressure('country'),
  'press-fine': pressure('fine'),
  'press-start': pressCore('country'),
  'press-time': pressHours('country'),
  'press-example': { value: 2, unit: 'kg', mark: 'derived' },
  'press-example-area': { value: 0.71, unit: 'kPa', mark: 'derived' },
  'board-gap': { value: [2, 3], unit: 'mm', mark: 'common-practice' },
  'myosin-set': { value: [50, 60], unit: 'C', mark: 'memory', source: 'forcemeat-textbooks' },
  'fat-melt': { value: [28, 40], unit: 'C', mark: 'memory', source: 'forcemeat-textbooks' },
  'collagen-shrink': { value: [60, 68], unit: 'C', mark: 'memory', source: 'forcemeat-textbooks' },
} as const satisfies Record<string, Figure>;

import { BRINE_LIFE_DAYS } from '@larderwright/calc/brine';
import { COOL_GAP_MIN } from '@larderwright/calc/cooling';
import { HURDLE_SALT, SEALED_DAYS } from '@larderwright/calc/label';
import { CHILL_DEPTH_MM } from '@larderwright/calc/mould';
import type { Figure } from './figure.ts';
import { ofFraction } from './from-calc.ts';

/** Cold keeping, cooling depth, life of a pack. */
export const chillFigures = {
  'chill-limit': {
    value: 5,
    unit: 'C',
    bound: 'at-most',
    mark: 'confirmed',
    source: 'food-code-reheating',
  },
  'chill-aim': { value: [0, 3], unit: 'C', mark: 'common-practice' },
  'sealed-chill': { value: 3, unit: 'C', mark: 'confirmed', source: 'uk-vp-map-guidance' },
  'vac-short-life': {
    value: SEALED_DAYS,
    unit: 'd',
    bound: 'at-most',
    mark: 'confirmed',
    source: 'uk-vp-map-guidance',
  },
  'vac-hurdle-temp': { value: 90, unit: 'C', mark: 'confirmed', source: 'uk-vp-map-guidance' },
  'vac-hurdle-time': { value: 10, unit: 'min', mark: 'confirmed', source: 'uk-vp-map-guidance' },
  'vac-hurdle-salt': ofFraction(HURDLE_SALT, {
    bound: 'at-least',
    mark: 'confirmed',
    source: 'uk-vp-map-guidance',
  }),
  'vac-hurdle-aw': {
    value: 0.97,
    unit: '',
    bound: 'at-most',
    mark: 'confirmed',
    source: 'uk-vp-map-guidance',
  },
  'vac-hurdle-ph': { value: 5, unit: '', bound: 'at-most', mark: 'confirmed', source: 'uk-vp-map-guidance' },
  'garlic-oil-life': { value: 7, unit: 'd', bound: 'at-most', mark: 'common-practice' },
  'home-fridge': { value: 4, unit: 'C', bound: 'at-most', mark: 'common-practice' },
  'home-life': { value: [3, 4], unit: 'd', mark: 'common-practice' },
  'home-out': { value: 2, unit: 'h', mark: 'common-practice' },
  'home-freeze': { value: 2, unit: 'months', mark: 'common-practice' },
  'cure-room': { value: 4, unit: 'C', mark: 'common-practice' },
  'brine-life': { value: BRINE_LIFE_DAYS, unit: 'd', mark: 'common-practice' },
  'chill-depth': { value: CHILL_DEPTH_MM, unit: 'mm', mark: 'common-practice' },
  'chill-air-gap': { value: 25, unit: 'mm', bound: 'at-least', mark: 'common-practice' },
  'read-gap-early': { value: 15, unit: 'min', mark: 'common-practice' },
  'read-gap-late': { value: 30, unit: 'min', mark: 'common-practice' },
  'read-gap-bridge': { value: COOL_GAP_MIN, unit: 'min', mark: 'common-practice' },
  'unmould-after': { value: 12, unit: 'h', bound: 'at-least', mark: 'common-practice' },
  'rack-before-ice': { value: [10, 30], unit: 'min', mark: 'common-practice' },
  'insulation-cost': { value: [15, 40], unit: '%', mark: 'common-practice' },
} as const satisfies Record<string, Figure>;

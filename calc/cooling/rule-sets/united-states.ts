import type { LimitTemp } from '../../quantities/index.ts';
import type { CoolLeg, CoolRuleSet } from '../cool-leg.ts';

const H = 60;

function leg(fromF: number, toF: number, hours: number, mark: CoolLeg['mark']): CoolLeg {
  return {
    id: `${fromF}F-${toF}F`,
    from: { value: fromF, unit: 'F' },
    to: { value: toF, unit: 'F' },
    maxMin: hours * H,
    mark,
  };
}

const reviewed = '2026-11-25';
const printed = (value: number, published: number): LimitTemp => ({ value, unit: 'F', published });

export const FOOD_CODE_COOLING: CoolRuleSet = {
  id: 'us-food-code',
  title: 'Food Code, cooling',
  jurisdiction: 'United States, retail and restaurants',
  edition: '2022; same figures since 2005',
  reviewed,
  sources: ['food-code-cooling'],
  mark: 'confirmed',
  legs: [
    { ...leg(135, 70, 2, 'confirmed'), from: printed(135, 57), to: printed(70, 21) },
    { ...leg(135, 41, 6, 'confirmed'), from: printed(135, 57), to: printed(41, 5) },
  ],
  cured: null,
  conditions: [],
};

const federal = {
  jurisdiction: 'United States, federal plants',
  edition: 'as worded in 1999; guideline of December 2021',
  reviewed,
  mark: 'memory',
} as const;

export const FSIS_1: CoolRuleSet = {
  ...federal,
  id: 'us-fsis-1',
  title: 'Option 1, any cooked product',
  sources: ['fsis-stabilization'],
  legs: [leg(130, 80, 1.5, 'confirmed'), leg(80, 40, 5, 'confirmed')],
  cured: null,
  conditions: ['continuous'],
};

export const FSIS_2: CoolRuleSet = {
  ...federal,
  id: 'us-fsis-2',
  title: 'Option 2, any cooked product',
  sources: ['fsis-stabilization'],
  // 1999 calls more than 1 h "less certain"; later texts and trials take it as the limit.
  legs: [leg(120, 80, 1, 'memory'), leg(120, 55, 6, 'confirmed')],
  cured: null,
  chillStartMaxMin: 90,
  conditions: ['continuous', 'on-to-40F'],
};

export const FSIS_3_CURED: CoolRuleSet = {
  ...federal,
  id: 'us-fsis-3-cured',
  title: 'Option 3, cured products',
  sources: ['fsis-stabilization', 'cperfringens-cured-trials'],
  legs: [leg(130, 80, 5, 'confirmed'), leg(80, 45, 10, 'confirmed')],
  cured: [{ nitritePpm: 100, acceleratorPpm: 250 }],
  conditions: ['continuous'],
};

export const SLOW_20_CURED: CoolRuleSet = {
  id: 'us-slow-20-cured',
  title: 'Slow cooling, cured or dry products',
  jurisdiction: 'United States, California',
  edition: 'undated',
  reviewed,
  sources: ['us-ca-3-910-15'],
  mark: 'confirmed',
  legs: [leg(120, 40, 20, 'confirmed')],
  cured: [
    { nitritePpm: 120, saltOnWaterFraction: 0.035 },
    { nitritePpm: 40, saltOnWaterFraction: 0.06 },
    { waterActivityMax: 0.92 },
  ],
  mustFall: true,
  conditions: [],
};

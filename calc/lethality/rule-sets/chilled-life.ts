import type { CookRuleSet } from '../limit.ts';

/** °C and minutes, equal to 90 °C for 10 minutes against cold-growing C. botulinum. */
const CHILLED_LIFE_ROWS = [
  [80, 129],
  [81, 100],
  [82, 77],
  [83, 60],
  [84, 46],
  [85, 36],
  [86, 28],
  [87, 22],
  [88, 17],
  [89, 13],
  [90, 10],
  [91, 7.9],
  [92, 6.3],
  [93, 5],
  [94, 4],
  [95, 3.2],
  [96, 2.5],
  [97, 2],
  [98, 1.6],
  [99, 1.3],
  [100, 1],
] as const satisfies readonly (readonly [number, number])[];

/** Minutes worked out from the United States z (7 °C below 90 °C, 10 °C above), rounded up to a tenth. */
const CHILLED_LIFE_US_ROWS = CHILLED_LIFE_ROWS.map(([tempC]): readonly [number, number] => {
  const minutes = 10 * 10 ** ((90 - tempC) / (tempC < 90 ? 7 : 10));
  return [tempC, Math.ceil(Number((minutes * 10).toFixed(6))) / 10];
});

function limits(
  prefix: string,
  rows: readonly (readonly [number, number])[],
  source: 'cfa-2006' | 'fda-fish-a4',
) {
  return rows.map(([tempC, minutes]) => ({
    id: `${prefix}-${tempC}C`,
    stated: { value: tempC, unit: 'C' as const },
    hold: { s: Math.round(minutes * 60), printed: `${minutes} min` },
    serves: 'any' as const,
    form: 'any' as const,
    source,
    mark: source === 'cfa-2006' ? ('confirmed' as const) : ('derived' as const),
  }));
}

/** For a chilled vacuum life over ten days with no other hurdle. Not a shelf-stable process, not a normal pâté cook. */
export const UK_CHILLED_LIFE: CookRuleSet = {
  id: 'uk-90c-10min',
  title: '90 °C for 10 minutes and equivalents',
  jurisdiction: 'United Kingdom, vacuum-packed chilled food',
  edition: '2006',
  reviewed: '2026-11-25',
  sources: ['cfa-2006'],
  mark: 'confirmed',
  conditions: ['chilled-life'],
  limits: limits('np', CHILLED_LIFE_ROWS, 'cfa-2006'),
};

export const US_CHILLED_LIFE: CookRuleSet = {
  id: 'us-90c-10min',
  title: '90 °C for 10 minutes and equivalents by z = 7 and 10 °C',
  jurisdiction: 'United States, fishery guidance',
  edition: '4th edition, Appendix 4',
  reviewed: '2026-11-25',
  sources: ['fda-fish-a4'],
  mark: 'derived',
  conditions: ['chilled-life'],
  limits: limits('np-us', CHILLED_LIFE_US_ROWS, 'fda-fish-a4'),
};

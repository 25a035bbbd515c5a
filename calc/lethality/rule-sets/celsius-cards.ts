import type { SourceId } from '../../sources/index.ts';
import type { CookLimit, CookRuleSet } from '../limit.ts';
import { printedSeconds } from './fsis-meat.ts';

function limit(
  prefix: string,
  tempC: number,
  printed: string,
  source: SourceId,
  mark: CookLimit['mark'],
): CookLimit {
  return {
    id: `${prefix}-${tempC}C-${printed.replace(/[ <]/g, '')}`,
    stated: { value: tempC, unit: 'C' },
    hold: { s: printedSeconds(printed), printed },
    serves: 'any',
    form: 'any',
    source,
    mark,
  };
}

/** Written for meat: a bird in the mix is outside it. */
function withoutPoultry(limits: readonly CookLimit[]): CookLimit[] {
  return limits.map((one) => ({ ...one, serves: 'no-poultry' }));
}

const reviewed = '2026-11-25';

/** Pairs published as equal to 70 °C for 2 minutes. */
export const UK_ADVICE: CookRuleSet = {
  id: 'uk-advice',
  title: 'Pairs equal to 70 °C for 2 minutes',
  jurisdiction: 'United Kingdom, advice',
  edition: 'undated',
  reviewed,
  sources: ['fsa-70-2'],
  mark: 'confirmed',
  conditions: [],
  limits: [
    limit('uk', 60, '45 min', 'fsa-70-2', 'confirmed'),
    limit('uk', 65, '10 min', 'fsa-70-2', 'confirmed'),
    limit('uk', 70, '2 min', 'fsa-70-2', 'confirmed'),
    limit('uk', 75, '30 s', 'fsa-70-2', 'confirmed'),
    limit('uk', 80, '6 s', 'fsa-70-2', 'confirmed'),
  ],
};

/** The committee's pairs for burgers, z = 6 °C. Longer than the advice below 70 °C, shorter above. */
export const UK_ACMSF_2007: CookRuleSet = {
  id: 'uk-acmsf-2007',
  title: 'Pairs for E. coli in minced meat, z = 6 °C',
  jurisdiction: 'United Kingdom, expert committee',
  edition: 'March 2007',
  reviewed,
  sources: ['acmsf-2007'],
  mark: 'confirmed',
  conditions: [],
  limits: withoutPoultry([
    // 2 × 10^((70 − 60) ÷ 6) = 92.83 min by the committee's own z, rounded up.
    limit('acmsf', 60, '93 min', 'acmsf-2007', 'derived'),
    // Printed to a tenth; 2 × 10^(5 ÷ 6) = 13.626 min = 817.6 s, so the seconds are rounded up.
    { ...limit('acmsf', 65, '13.6 min', 'acmsf-2007', 'confirmed'), hold: { s: 818, printed: '13.6 min' } },
    limit('acmsf', 70, '2 min', 'acmsf-2007', 'confirmed'),
    limit('acmsf', 75, '18 s', 'acmsf-2007', 'confirmed'),
  ]),
};

/** Card for poultry, minced meat and chicken liver. */
export const NEW_ZEALAND_CARD: CookRuleSet = {
  id: 'nz-card',
  title: 'Poultry, minced meat and poultry liver',
  jurisdiction: 'New Zealand',
  edition: 'in force from about 2017',
  reviewed,
  sources: ['nz-food-control'],
  mark: 'confirmed',
  conditions: [],
  limits: [
    limit('nz', 65, '15 min', 'nz-food-control', 'confirmed'),
    limit('nz', 70, '3 min', 'nz-food-control', 'confirmed'),
    limit('nz', 75, '30 s', 'nz-food-control', 'confirmed'),
  ],
};

/** The standard for meat of mammals; that poultry has another is from memory. */
export const AUSTRALIA_MEAT: CookRuleSet = {
  id: 'au-as4696',
  title: 'Cooked meat',
  jurisdiction: 'Australia',
  edition: 'AS 4696, as stated in 2018',
  reviewed,
  sources: ['as-4696-cooking'],
  mark: 'confirmed',
  conditions: [],
  limits: withoutPoultry([limit('au', 65, '10 min', 'as-4696-cooking', 'confirmed')]),
};

export const IRELAND_COOK_CHILL: CookRuleSet = {
  id: 'ie-cook-chill',
  title: 'Cook-chill',
  jurisdiction: 'Ireland',
  edition: 'Guidance Note 15',
  reviewed,
  sources: ['fsai-gn15'],
  mark: 'confirmed',
  conditions: [],
  limits: [limit('ie', 75, '0 s', 'fsai-gn15', 'confirmed')],
};

/** Advice from trials, for food with pork, wild boar or deer liver. The stricter pair is the one to plan by. */
export const HEV_ADVISORY: CookRuleSet = {
  id: 'hev-advisory',
  title: 'Hepatitis E in food with pork liver',
  jurisdiction: 'Published trials, advice only',
  edition: '2012 and 2023',
  reviewed,
  sources: ['hev-barnaud-2012', 'hev-stunnenberg-2023'],
  mark: 'confirmed',
  conditions: ['advice-only'],
  limits: [
    limit('hev', 71, '20 min', 'hev-barnaud-2012', 'confirmed'),
    limit('hev', 71, '5 min', 'hev-stunnenberg-2023', 'confirmed'),
  ],
};

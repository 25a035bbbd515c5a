import type { CoolLeg, CoolRuleSet } from '../cool-leg.ts';

const H = 60;
const reviewed = '2026-11-25';

function leg(fromC: number | null, toC: number, hours: number, mark: CoolLeg['mark']): CoolLeg {
  return {
    id: `${fromC === null ? 'end' : `${fromC}C`}-${toC}C`,
    from: fromC === null ? null : { value: fromC, unit: 'C' },
    to: { value: toC, unit: 'C' },
    maxMin: hours * H,
    mark,
  };
}

export const AUSTRALIA_NEW_ZEALAND: CoolRuleSet = {
  id: 'au-nz-3.2.2',
  title: 'Standard 3.2.2, cooling',
  jurisdiction: 'Australia and New Zealand',
  edition: 'undated',
  reviewed,
  sources: ['anz-3-2-2'],
  mark: 'confirmed',
  legs: [leg(60, 21, 2, 'confirmed'), leg(21, 5, 4, 'confirmed')],
  cured: null,
  conditions: [],
};

export const CANADA_FOOD_SERVICE: CoolRuleSet = {
  id: 'ca-food-service',
  title: 'Food service, typical provincial code',
  jurisdiction: 'Canada, provinces',
  edition: '2016',
  reviewed,
  sources: ['ca-retail-code-2016'],
  mark: 'memory',
  legs: [leg(60, 20, 2, 'memory'), leg(20, 4, 4, 'memory')],
  cured: null,
  conditions: ['check-province'],
};

export const FRANCE_CATERING: CoolRuleSet = {
  id: 'fr-catering',
  title: 'Rapid cooling, retail and catering',
  jurisdiction: 'France',
  edition: '2009',
  reviewed,
  sources: ['fr-arrete-2009'],
  mark: 'confirmed',
  legs: [{ ...leg(63, 10, 2, 'confirmed'), strict: true }],
  cured: null,
  conditions: ['cold-store'],
};

const largeMeats = {
  jurisdiction: 'United Kingdom and Australia, trade recommendation',
  edition: '1998',
  reviewed,
  sources: ['large-meats-1998'],
  conditions: ['large-pieces'],
} as const;

export const LARGE_UNCURED: CoolRuleSet = {
  ...largeMeats,
  id: 'uk-large-uncured',
  title: 'Large cooked meats, uncured',
  mark: 'memory',
  legs: [
    { ...leg(null, 50, 2.5, 'confirmed'), goodMin: 1 * H },
    { ...leg(50, 12, 6, 'confirmed'), goodMin: 6 * H },
    // 10 h in all less the other two; one copy prints 1.6 h.
    { ...leg(12, 5, 1.5, 'derived'), goodMin: 1 * H },
  ],
  cured: null,
};

export const LARGE_CURED: CoolRuleSet = {
  ...largeMeats,
  id: 'uk-large-cured',
  title: 'Large cooked meats, cured',
  mark: 'confirmed',
  legs: [
    { ...leg(null, 50, 3.25, 'confirmed'), goodMin: 1.25 * H },
    { ...leg(50, 12, 7.5, 'confirmed'), goodMin: 7.5 * H },
    { ...leg(12, 5, 1.75, 'confirmed'), goodMin: 1.25 * H },
  ],
  cured: [{ nitritePpm: 100, saltOnWaterFraction: 0.025 }],
};

export const UK_RETAIL_UNDER_5KG: CoolRuleSet = {
  id: 'uk-retail-under-5kg',
  title: 'Cooked pieces under 5 kg',
  jurisdiction: 'United Kingdom, retail meat trade',
  edition: 'undated',
  reviewed,
  sources: ['uk-retail-meat-code'],
  mark: 'memory',
  legs: [leg(null, 5, 4, 'memory')],
  cured: null,
  conditions: ['under-5kg'],
};

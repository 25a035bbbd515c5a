import type { Mark } from '@larderwright/calc/sources';

/** Nitrate as a law writes it. Nothing computes with it, so the words of the law stand as they are. */
export interface NitrateRule {
  readonly id: string;
  readonly where: string;
  readonly rule: string;
  readonly source: string;
  readonly mark: Mark;
}

const us = (id: string, what: string, rule: string): NitrateRule => ({
  id: `nitrate-us-${id}`,
  where: `United States: ${what}`,
  rule,
  source: 'us-9-cfr-424-21-c',
  mark: 'confirmed',
});

/** What laws say of nitrate. */
export const NITRATE_RULES: readonly NitrateRule[] = [
  us('bacon', 'bacon', 'none'),
  us('infants', 'food for babies and small children', 'none, and no nitrite'),
  us('chopped', 'chopped meat', 'at most 2.75 oz to 100 lb of green meat'),
  us('dry', 'whole muscle, dry cure', 'at most 3.5 oz to 100 lb of green meat'),
  us('pickle', 'whole muscle, pickle', 'at most 7 lb in 100 gallons of pickle'),
  us(
    'left',
    'in the finished product',
    'with nitrite at most 200 mg/kg, counted as sodium nitrite; bacon has its own rule',
  ),
  {
    id: 'nitrate-gb-unheated',
    where: 'Great Britain: meat products that are not heated',
    rule: 'at most 150 mg/kg put in, as sodium nitrate; listed traditional cures have their own',
    source: 'gb-traditional-cures',
    mark: 'memory',
  },
  {
    id: 'nitrate-anz-dried',
    where: 'Australia and New Zealand: slowly dried or fermented',
    rule: 'at most 500 mg/kg',
    source: 'anz-schedule-15',
    mark: 'memory',
  },
];

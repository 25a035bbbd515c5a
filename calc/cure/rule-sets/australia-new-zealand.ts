import { SOURCES } from '../../sources/index.ts';
import type { CureLimit, CureRuleSet } from './limit.ts';

const inTheFood = {
  substance: 'nitrite',
  kind: 'residual',
  role: 'ceiling',
  expressedAs: 'nitrite-and-nitrate-as-sodium-nitrite',
  basis: 'finished',
  source: 'anz-schedule-15',
  mark: 'memory',
} as const satisfies Partial<CureLimit>;

/** What may be left in the food, nitrite and nitrate together as sodium nitrite. No limit on what is put in. */
export const AUSTRALIA_NEW_ZEALAND: CureRuleSet = {
  id: 'australia-new-zealand',
  title: 'Nitrite in cured meat',
  jurisdiction: 'Australia and New Zealand',
  ingoingBasis: 'total',
  edition: SOURCES['anz-schedule-15'].edition,
  reviewed: SOURCES['anz-schedule-15'].reviewed,
  sources: ['anz-schedule-15'],
  mark: 'memory',
  limits: [
    { ...inTheFood, id: 'anz-nitrite-in-food', heating: 'heat-treated', valuePpm: 125, printed: '125' },
    {
      ...inTheFood,
      id: 'anz-nitrite-in-food-sterilised',
      heating: 'sterilised',
      valuePpm: 50,
      printed: '50',
    },
  ],
};

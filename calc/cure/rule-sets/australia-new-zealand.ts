import { SOURCES } from '../../sources/index.ts';
import type { CureRuleSet } from './limit.ts';
import { SHARED_ROWS } from './shared-rows.ts';

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
    { ...SHARED_ROWS.anzLeft, id: 'anz-nitrite-in-food', heating: 'heat-treated' },
    {
      ...SHARED_ROWS.anzLeft,
      id: 'anz-nitrite-in-food-sterilised',
      heating: 'sterilised',
      valuePpm: 50,
      printed: '50',
    },
  ],
};

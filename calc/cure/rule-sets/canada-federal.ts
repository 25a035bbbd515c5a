import { SOURCES } from '../../sources/index.ts';
import type { CureRuleSet } from './limit.ts';
import { SHARED_ROWS } from './shared-rows.ts';

/** Nitrite and nitrate together, each weighed as its salt. */
export const CANADA_FEDERAL: CureRuleSet = {
  id: 'canada-federal',
  title: 'Nitrite and nitrate in cured meat',
  jurisdiction: 'Canada, federal',
  ingoingBasis: 'total',
  edition: SOURCES['ca-cured-meat'].edition,
  reviewed: SOURCES['ca-cured-meat'].reviewed,
  sources: ['ca-cured-meat'],
  mark: 'confirmed',
  limits: [
    { ...SHARED_ROWS.canadaPutIn, id: 'canada-nitrite-ingoing', heating: 'any' },
    { ...SHARED_ROWS.canadaCalledCured, id: 'canada-called-cured', heating: 'any' },
  ],
};

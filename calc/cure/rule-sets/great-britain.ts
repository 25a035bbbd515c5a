import { SOURCES } from '../../sources/index.ts';
import type { CureRuleSet } from './limit.ts';
import { SHARED_ROWS } from './shared-rows.ts';

/** Amount added to the product, as sodium nitrite. Traditional cures have residual limits of their own and are not mixed forcemeats. */
export const GREAT_BRITAIN: CureRuleSet = {
  id: 'great-britain',
  title: 'Nitrite added to meat products',
  jurisdiction: 'Great Britain',
  ingoingBasis: 'total',
  edition: SOURCES['gb-1333-2008'].edition,
  reviewed: SOURCES['gb-1333-2008'].reviewed,
  sources: ['gb-1333-2008'],
  mark: 'confirmed',
  limits: [
    { ...SHARED_ROWS.gbPutIn, id: 'gb-nitrite-added', heating: 'heat-treated' },
    {
      ...SHARED_ROWS.gbPutIn,
      id: 'gb-nitrite-added-sterilised',
      heating: 'sterilised',
      valuePpm: 100,
      printed: '100',
    },
  ],
};

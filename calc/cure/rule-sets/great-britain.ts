import { SOURCES } from '../../sources/index.ts';
import type { CureLimit, CureRuleSet } from './limit.ts';

const added = {
  substance: 'nitrite',
  kind: 'ingoing',
  role: 'ceiling',
  expressedAs: 'sodium-nitrite',
  basis: 'total',
  source: 'gb-1333-2008',
  mark: 'confirmed',
} as const satisfies Partial<CureLimit>;

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
    { ...added, id: 'gb-nitrite-added', heating: 'heat-treated', valuePpm: 150, printed: '150' },
    { ...added, id: 'gb-nitrite-added-sterilised', heating: 'sterilised', valuePpm: 100, printed: '100' },
  ],
};

import { SOURCES } from '../../sources/index.ts';
import type { CureRuleSet } from './limit.ts';

/** A standard for trade between countries: what may be left in the food, as nitrite ion. */
export const CODEX: CureRuleSet = {
  id: 'codex',
  title: 'Nitrite in heat-treated comminuted meat products',
  jurisdiction: 'Codex Alimentarius, a standard for trade between countries',
  ingoingBasis: 'total',
  edition: SOURCES['codex-stan-192'].edition,
  reviewed: SOURCES['codex-stan-192'].reviewed,
  sources: ['codex-stan-192'],
  mark: 'memory',
  limits: [
    {
      id: 'codex-nitrite-residual',
      substance: 'nitrite',
      kind: 'residual',
      role: 'ceiling',
      heating: 'any',
      valuePpm: 80,
      printed: '80',
      expressedAs: 'nitrite-ion',
      basis: 'finished',
      source: 'codex-stan-192',
      mark: 'memory',
    },
  ],
};

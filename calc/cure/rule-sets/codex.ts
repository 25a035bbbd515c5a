import { SOURCES } from '../../sources/index.ts';
import type { CureRuleSet } from './limit.ts';
import { CODEX_LEFT } from './shared-rows.ts';

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
      ...CODEX_LEFT,
      id: 'codex-nitrite-residual',
      heating: 'any',
      source: 'codex-stan-192',
      mark: 'memory',
    },
  ],
};

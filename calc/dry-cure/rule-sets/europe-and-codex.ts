import { CODEX_LEFT, SHARED_ROWS } from '../../cure/index.ts';
import { SOURCES } from '../../sources/index.ts';
import type { WholeMuscleRuleSet } from './limit.ts';

/**
 * Figures are nitrite ion. Traditional cures keep limits of their own, product by product; those
 * were not seen and are not carried.
 */
export const EUROPEAN_UNION: WholeMuscleRuleSet = {
  id: 'european-union-2025',
  title: 'Nitrite in meat products from 9 October 2025',
  jurisdiction: 'European Union and Northern Ireland',
  ingoingBasis: 'total',
  edition: SOURCES['eu-2023-2108'].edition,
  reviewed: SOURCES['eu-2023-2108'].reviewed,
  sources: ['eu-2023-2108', 'fr-nitrite-plan-2023'],
  mark: 'memory',
  appliesFrom: '2025-10-09',
  limits: [
    { ...SHARED_ROWS.euPutIn, id: 'eu-muscle-added', heating: 'any', traditional: false },
    { ...SHARED_ROWS.euLeft, id: 'eu-muscle-residual', heating: 'any', traditional: false },
  ],
  references: [
    ['fr-ham-code-of-usage', 120],
    ['fr-ham-step-1', 90],
    ['fr-ham-step-2', 80],
  ].map(([id, valuePpm]) => ({
    id: String(id),
    valuePpm: Number(valuePpm),
    expressedAs: 'sodium-nitrite',
    source: 'fr-nitrite-plan-2023',
    mark: 'confirmed',
  })),
};

/** Heat-treated whole pieces only: what may be left, as nitrite ion. */
export const CODEX: WholeMuscleRuleSet = {
  id: 'codex',
  title: 'Nitrite left in heat-treated whole pieces',
  jurisdiction: 'Codex Alimentarius, a standard for trade between countries',
  ingoingBasis: 'total',
  edition: SOURCES['codex-stan-192-08-2-2'].edition,
  reviewed: SOURCES['codex-stan-192-08-2-2'].reviewed,
  sources: ['codex-stan-192-08-2-2'],
  mark: 'confirmed',
  limits: [
    {
      ...CODEX_LEFT,
      id: 'codex-whole-pieces-residual',
      heating: 'any',
      finishes: ['cooked'],
      source: 'codex-stan-192-08-2-2',
      mark: 'confirmed',
    },
  ],
};

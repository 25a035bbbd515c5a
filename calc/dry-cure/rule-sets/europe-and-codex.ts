import { SOURCES } from '../../sources/index.ts';
import type { WholeMuscleLimit, WholeMuscleRuleSet } from './limit.ts';

const asIon = {
  substance: 'nitrite',
  role: 'ceiling',
  heating: 'any',
  expressedAs: 'nitrite-ion',
} as const satisfies Partial<WholeMuscleLimit>;

const european = {
  ...asIon,
  traditional: false,
  source: 'eu-2023-2108',
  mark: 'memory',
} as const satisfies Partial<WholeMuscleLimit>;

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
    { ...european, id: 'eu-muscle-added', kind: 'ingoing', basis: 'total', valuePpm: 80, printed: '80' },
    {
      ...european,
      id: 'eu-muscle-residual',
      kind: 'residual',
      basis: 'finished',
      valuePpm: 45,
      printed: '45',
    },
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
      ...asIon,
      id: 'codex-whole-pieces-residual',
      kind: 'residual',
      finishes: ['cooked'],
      valuePpm: 80,
      printed: '80',
      basis: 'finished',
      source: 'codex-stan-192-08-2-2',
      mark: 'confirmed',
    },
  ],
};

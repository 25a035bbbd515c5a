import { SOURCES } from '../../sources/index.ts';
import type { CureLimit, CureReference, CureRuleSet } from './limit.ts';

const asIon = {
  substance: 'nitrite',
  role: 'ceiling',
  expressedAs: 'nitrite-ion',
  source: 'eu-2023-2108',
  mark: 'memory',
} as const satisfies Partial<CureLimit>;

const ingoing = { ...asIon, kind: 'ingoing', basis: 'total' } as const;
const residual = { ...asIon, kind: 'residual', basis: 'finished' } as const;

/** Trade undertaking of France for pâtés and rillettes, mg/kg of sodium nitrite. */
const undertaking = {
  expressedAs: 'sodium-nitrite',
  source: 'fr-nitrite-plan-2023',
  mark: 'confirmed',
} as const satisfies Partial<CureReference>;

/** Figures are nitrite ion, not sodium nitrite. The residual limit holds to the end of shelf life. */
export const EUROPEAN_UNION: CureRuleSet = {
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
    { ...ingoing, id: 'eu-nitrite-added', heating: 'heat-treated', valuePpm: 80, printed: '80' },
    { ...residual, id: 'eu-nitrite-residual', heating: 'heat-treated', valuePpm: 45, printed: '45' },
    { ...ingoing, id: 'eu-nitrite-added-sterilised', heating: 'sterilised', valuePpm: 55, printed: '55' },
    { ...residual, id: 'eu-nitrite-residual-sterilised', heating: 'sterilised', valuePpm: 25, printed: '25' },
  ],
  references: [
    { ...undertaking, id: 'fr-pate-code-of-usage', valuePpm: 120 },
    { ...undertaking, id: 'fr-pate-step-1', valuePpm: 100 },
    { ...undertaking, id: 'fr-pate-step-2', valuePpm: 90 },
  ],
};

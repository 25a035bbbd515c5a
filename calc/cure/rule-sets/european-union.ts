import { SOURCES } from '../../sources/index.ts';
import type { CureReference, CureRuleSet } from './limit.ts';
import { SHARED_ROWS } from './shared-rows.ts';

const { euPutIn, euLeft } = SHARED_ROWS;

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
    { ...euPutIn, id: 'eu-nitrite-added', heating: 'heat-treated' },
    { ...euLeft, id: 'eu-nitrite-residual', heating: 'heat-treated' },
    { ...euPutIn, id: 'eu-nitrite-added-sterilised', heating: 'sterilised', valuePpm: 55, printed: '55' },
    { ...euLeft, id: 'eu-nitrite-residual-sterilised', heating: 'sterilised', valuePpm: 25, printed: '25' },
  ],
  references: [
    { ...undertaking, id: 'fr-pate-code-of-usage', valuePpm: 120 },
    { ...undertaking, id: 'fr-pate-step-1', valuePpm: 100 },
    { ...undertaking, id: 'fr-pate-step-2', valuePpm: 90 },
  ],
};

import { SOURCES } from '../../sources/index.ts';
import type { CureLimit, CureRuleSet } from './limit.ts';

/** Counted on the whole raw batch, before smoking, cooking or fermentation. */
const onRawBatch = {
  substance: 'nitrite',
  kind: 'ingoing',
  heating: 'any',
  expressedAs: 'nitrite-and-nitrate-salts',
  basis: 'total',
  source: 'ca-cured-meat',
  mark: 'confirmed',
} as const satisfies Partial<CureLimit>;

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
    {
      ...onRawBatch,
      id: 'canada-nitrite-ingoing',
      role: 'ceiling',
      valuePpm: 200,
      printed: '200',
      asWritten: '0.32 oz to 100 lb',
    },
    { ...onRawBatch, id: 'canada-called-cured', role: 'naming-floor', valuePpm: 100, printed: '100' },
  ],
};

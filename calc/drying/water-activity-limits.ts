import type { Mark, SourceId } from '../sources/index.ts';

/** A water activity that a law or a microbe ties something to. Shown beside a measured figure; none judges a product. */
export interface WaterActivityLimit {
  readonly id: string;
  readonly group: 'rule' | 'growth' | 'usual';
  readonly low: number | null;
  readonly high: number | null;
  readonly source: SourceId;
  readonly mark: Mark;
}

const growth = (id: string, low: number): WaterActivityLimit => ({
  id,
  group: 'growth',
  low,
  high: null,
  source: 'fda-growth-factors',
  mark: 'confirmed',
});
const usual = (id: string, low: number | null, high: number): WaterActivityLimit => ({
  id,
  group: 'usual',
  low,
  high,
  source: 'fsis-shelf-stable',
  mark: 'confirmed',
});

/** Rules have a highest value, growth a lowest one, usual products a band. */
export const WATER_ACTIVITY_LIMITS: readonly WaterActivityLimit[] = [
  {
    id: 'no-nitrite-statement-may-go',
    group: 'rule',
    low: null,
    high: 0.92,
    source: 'us-9-cfr-317-17',
    mark: 'confirmed',
  },
  { id: 'country-ham', group: 'rule', low: null, high: 0.92, source: 'us-9-cfr-319-106', mark: 'confirmed' },
  growth('botulinum-cold-growing', 0.965),
  growth('salmonella', 0.95),
  growth('bacillus-cereus', 0.95),
  growth('botulinum-proteolytic', 0.93),
  growth('perfringens', 0.93),
  growth('listeria', 0.92),
  growth('staphylococcus', 0.86),
  usual('semi-dry-sausage', 0.95, 0.97),
  usual('dry-sausage', 0.85, 0.93),
  usual('dried-ham-coppa-jerky', null, 0.88),
];

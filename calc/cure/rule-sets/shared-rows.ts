import type { CureLimit } from './limit.ts';

type Figures = Pick<
  CureLimit,
  'substance' | 'kind' | 'role' | 'valuePpm' | 'printed' | 'expressedAs' | 'basis'
> &
  Partial<Pick<CureLimit, 'asWritten'>>;
type Row = Figures & Pick<CureLimit, 'source' | 'mark'>;

const ceiling = { substance: 'nitrite', role: 'ceiling' } as const;
const putIn = { ...ceiling, kind: 'ingoing', basis: 'total' } as const;
const left = { ...ceiling, kind: 'residual', basis: 'finished' } as const;
const bothAsNitrite = 'nitrite-and-nitrate-as-sodium-nitrite' as const;
const canada = {
  source: 'ca-cured-meat',
  mark: 'confirmed',
  expressedAs: 'nitrite-and-nitrate-salts',
} as const;
const eu = { source: 'eu-2023-2108', mark: 'memory', expressedAs: 'nitrite-ion' } as const;

/**
 * Figures a law gives for mixed forcemeats and for whole muscle alike, carried once. A rule set adds its own id and
 * the products the row binds.
 */
export const SHARED_ROWS = {
  usLeft: {
    ...left,
    valuePpm: 200,
    printed: '200',
    expressedAs: bothAsNitrite,
    source: 'us-9-cfr-424-21-c',
    mark: 'confirmed',
  },
  usKeepRefrigerated: {
    substance: 'nitrite',
    kind: 'ingoing',
    role: 'policy-floor',
    valuePpm: 120,
    printed: '120',
    expressedAs: 'sodium-nitrite',
    basis: 'meat-block',
    source: 'us-fsis-7620-3',
    mark: 'confirmed',
  },
  /** Counted on the whole raw batch, before smoking, cooking or fermentation. */
  canadaPutIn: { ...putIn, ...canada, valuePpm: 200, printed: '200', asWritten: '0.32 oz to 100 lb' },
  canadaCalledCured: { ...putIn, ...canada, role: 'naming-floor', valuePpm: 100, printed: '100' },
  gbPutIn: {
    ...putIn,
    valuePpm: 150,
    printed: '150',
    expressedAs: 'sodium-nitrite',
    source: 'gb-1333-2008',
    mark: 'confirmed',
  },
  euPutIn: { ...putIn, ...eu, valuePpm: 80, printed: '80' },
  euLeft: { ...left, ...eu, valuePpm: 45, printed: '45' },
  anzLeft: {
    ...left,
    valuePpm: 125,
    printed: '125',
    expressedAs: bothAsNitrite,
    source: 'anz-schedule-15',
    mark: 'memory',
  },
} as const satisfies Record<string, Row>;

/** What Codex lets be left, in each of its two food categories; their texts are two sources. */
export const CODEX_LEFT = {
  ...left,
  valuePpm: 80,
  printed: '80',
  expressedAs: 'nitrite-ion',
} as const satisfies Figures;

import type { Mark } from '@larderwright/calc/sources';

/** What a law or an agency asks of a product that is to stand, or of one in which Listeria is not to grow. */
export interface ShelfRule {
  readonly id: string;
  readonly rule: string;
  readonly ph: string;
  readonly waterActivity: string;
  readonly source: string;
  readonly mark: Mark;
}

/** Rules on pH and water activity that calc judges nothing by. */
export const SHELF_RULES: readonly ShelfRule[] = [
  {
    id: 'us-acid',
    rule: 'United States: under this pH a food is acid; above it, and above the water activity, canning rules apply',
    ph: '4.6',
    waterActivity: '0.85',
    source: 'us-21-cfr-113-114',
    mark: 'confirmed',
  },
  {
    id: 'us-listeria-shelf-stable',
    rule: 'United States, meat plants: shelf-stable for the Listeria rule, at most',
    ph: '–',
    waterActivity: '0.85',
    source: 'fsis-listeria-guideline',
    mark: 'confirmed',
  },
  {
    id: 'eu-listeria-ph',
    rule: 'European Union: counts as unable to grow Listeria, by pH alone, at most',
    ph: '4.4',
    waterActivity: '–',
    source: 'eu-2073-2005',
    mark: 'memory',
  },
  {
    id: 'eu-listeria-aw',
    rule: 'The same, by water activity alone, at most',
    ph: '–',
    waterActivity: '0.92',
    source: 'eu-2073-2005',
    mark: 'memory',
  },
  {
    id: 'eu-listeria-both',
    rule: 'The same, by both together, at most',
    ph: '5.0',
    waterActivity: '0.94',
    source: 'eu-2073-2005',
    mark: 'memory',
  },
];

import type { SourceId } from '../sources/index.ts';

/** How alcohol was treated, and what share of it stays. */
export interface AlcoholKept {
  readonly id: string;
  readonly what: string;
  readonly fraction: number;
}

/** United States Department of Agriculture, Table of Nutrient Retention Factors, release 6. */
export const ALCOHOL_KEPT: readonly AlcoholKept[] = [
  { id: 'no-heat', what: 'Nothing is heated', fraction: 1 },
  { id: 'off-the-heat', what: 'Added to boiling liquid, off the heat', fraction: 0.85 },
  { id: 'flamed', what: 'Flamed', fraction: 0.75 },
  { id: 'overnight', what: 'Left open overnight, not heated', fraction: 0.7 },
  { id: 'min-15', what: 'Stirred in and cooked 15 min', fraction: 0.4 },
  { id: 'min-30', what: 'Stirred in and cooked 30 min', fraction: 0.35 },
  { id: 'min-60', what: 'Stirred in and cooked 1 h', fraction: 0.25 },
  { id: 'min-90', what: 'Stirred in and cooked 1 1/2 h', fraction: 0.2 },
  { id: 'min-120', what: 'Stirred in and cooked 2 h', fraction: 0.1 },
  { id: 'min-150', what: 'Stirred in and cooked 2 1/2 h', fraction: 0.05 },
];
export const ALCOHOL_KEPT_SOURCE: SourceId = 'usda-retention-6';

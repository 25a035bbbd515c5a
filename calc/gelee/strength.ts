import { toBase } from '../quantities/index.ts';
import type { Mark, SourceId } from '../sources/index.ts';
import type { JellyUse } from './slice.ts';

/** Gelatine on the liquid that a use wants, g/mL as fraction, at 200–220 bloom. */
export interface UseStrength {
  readonly minFraction: number;
  readonly maxFraction: number;
}

/** Common practice, no source. */
export const STRENGTH_BY_USE: Readonly<Record<JellyUse, UseStrength>> = {
  spoon: { minFraction: 0.015, maxFraction: 0.02 },
  coat: { minFraction: 0.025, maxFraction: 0.03 },
  slice: { minFraction: 0.03, maxFraction: 0.04 },
  inlay: { minFraction: 0.04, maxFraction: 0.05 },
};

/** Stronger than this a jelly is rubber. Common practice, no source. */
export const STRONGEST_FRACTION = 0.05;

/** Agar on the liquid. Common practice, no source. */
export const AGAR_STRENGTH: UseStrength = { minFraction: 0.006, maxFraction: 0.01 };

/** US liquid gallon, mL: 231 cubic inches exactly. Source: NIST Special Publication 811 (2008), appendix B.8. */
const ML_PER_US_GALLON = 231 * 2.54 ** 3;

/**
 * Grams to the litre of a ratio told in ounces to the US gallon.
 * @example gPerLOfOzPerGallon(4) // 29.96
 */
export function gPerLOfOzPerGallon(oz: number): number {
  return (toBase(oz, 'oz') / ML_PER_US_GALLON) * 1000;
}

/** One row of the published table, ounces to the US gallon. */
export interface StockRatio {
  readonly id: string;
  readonly name: string;
  readonly minOz: number;
  readonly maxOz: number;
}

/** Granulated gelatine by use, as a textbook prints it. Takes about 225–250 bloom and unsalted stock for granted. */
export const STOCK_RATIOS: {
  readonly source: SourceId;
  readonly mark: Mark;
  readonly rows: readonly StockRatio[];
} = {
  source: 'garde-manger-gelatine-ratios',
  mark: 'confirmed',
  rows: [
    { id: 'delicate', name: 'Delicate, not sliced', minOz: 2, maxOz: 2 },
    { id: 'coating', name: 'Coating', minOz: 4, maxOz: 4 },
    { id: 'sliceable', name: 'Sliced: pâté and terrine jelly', minOz: 6, maxOz: 8 },
    { id: 'firm', name: 'Firm, for platters', minOz: 10, maxOz: 12 },
    { id: 'mousse', name: 'Mousse that is unmoulded', minOz: 16, maxOz: 16 },
  ],
};

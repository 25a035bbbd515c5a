import type { MouldShape } from './slice.ts';

/** One mould of the batch. Null is unknown. */
export interface MouldFill {
  readonly id: string;
  readonly shape: MouldShape;
  readonly brimMl: number | null;
  readonly calculatedBrimMl: number | null;
  /** How far water differs from the measures: + holds more. */
  readonly waterDifferenceFraction: number | null;
  readonly densityGPerMl: number | null;
  readonly headspaceMm: number | null;
  readonly fillDepthMm: number | null;
  readonly liningMl: number | null;
  /** Fat sheet for one mould; other linings are weighed, not computed. */
  readonly fatLiningG: number | null;
  readonly liningSheetMm: { readonly acrossMm: number; readonly alongMm: number } | null;
  readonly fillMl: number | null;
  readonly fillG: number | null;
  readonly count: number | null;
  /** All of this mould. */
  readonly totalG: number | null;
  /** Plan of the fill, for the press. */
  readonly planAreaMm2: number | null;
  readonly boardMm: { readonly lengthMm: number; readonly widthMm: number } | null;
  readonly actualFillsG: readonly (number | null)[];
  /** How many of this mould alone the whole batch fills, and what is left over. */
  readonly batchFills: { readonly whole: number; readonly leftoverG: number } | null;
}

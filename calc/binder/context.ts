import type { CompositionTable } from '../ingredients/index.ts';

export interface BinderContext {
  /** The formula's meat block and total, g. Null is unknown. */
  readonly meatG: number | null;
  readonly totalG: number | null;
  /** Product after cooking and chilling, g. */
  readonly finishedG: number | null;
  readonly mixDensityGPerMl: number | null;
  /** Inside of the mould the slice is cut from, mm. */
  readonly mouldWidthMm: number | null;
  readonly mouldHeightMm: number | null;
  readonly composition: CompositionTable;
}

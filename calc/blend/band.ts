import type { StandardFigure } from './makeup.ts';
import type { BlendQuality } from './slice.ts';

/** What a bound may be of: what a person bounds, and what a standard of composition does. */
export type BoundQuality = BlendQuality | StandardFigure;

/** A bound on one side or both; null binds nothing. */
export interface ReadBand {
  readonly quality: BoundQuality;
  readonly min: number | null;
  readonly max: number | null;
}

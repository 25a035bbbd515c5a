import type { MouldDimension } from '../slice.ts';

/** Inside measures, mm. Only those the shape needs. */
export type Measures = Readonly<Partial<Record<MouldDimension, number>>>;

/**
 * A mould as it is filled, from its lowest point up. Depths in mm, areas in mm², volumes in mm³.
 * Depths are clamped to the mould by the caller.
 */
export interface MouldGeometry {
  /** From the lowest point to the rim. */
  readonly depthMm: number;
  /** Volume up to a depth. */
  readonly volumeToMm3: (depthMm: number) => number;
  /** Bottom and walls up to a depth: what a lining touches, without what is folded over the top. */
  readonly wallsToMm2: (depthMm: number) => number;
  /** Surface of the fill at a depth. */
  readonly surfaceAtMm2: (depthMm: number) => number;
  /** Plan of the fill at a depth, for a board: along and across. */
  readonly planAtMm: (depthMm: number) => { readonly lengthMm: number; readonly widthMm: number };
  /** Rim to rim across, over the bottom: what a sheet must cover. */
  readonly girthAcrossMm: number;
  /** Rim to rim along, over the bottom. */
  readonly girthAlongMm: number;
  /** A roll tied or boxed all round: no rim, hence no headspace unless one is given. */
  readonly closed: boolean;
}

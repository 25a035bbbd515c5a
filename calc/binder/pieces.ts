import type { PieceShape } from './slice.ts';

/** Largest piece that still slices, mm, and as a share of the smaller side of the mould. Common practice, no source. */
export const PIECE_MOST_MM = 12;
export const PIECE_MOST_SHARE = 1 / 3;

/** Volume of a piece, mL. A strip is as long as the slice is thick. */
function pieceMl(shape: PieceShape, sizeMm: number, sliceMm: number): number {
  switch (shape) {
    case 'cube':
      return sizeMm ** 3 / 1000;
    case 'ball':
      return ((Math.PI / 6) * sizeMm ** 3) / 1000;
    case 'strip':
      return (sizeMm ** 2 * sliceMm) / 1000;
  }
}

/**
 * Mean calliper width of a piece, mm: how near a cut must come to meet it. A cube 1.5 edges, a ball its diameter.
 * Source: `crofton-stereology`, from memory.
 */
function calliperMm(shape: PieceShape, sizeMm: number): number {
  return shape === 'cube' ? 1.5 * sizeMm : sizeMm;
}

/** Garnish scattered through a mix, and the slice it is cut into. */
export interface Scattered {
  /** Share of the volume of the mix that is this garnish. */
  readonly volumeFraction: number;
  readonly shape: PieceShape;
  readonly sizeMm: number;
  readonly faceMm2: number;
  readonly sliceMm: number;
}

/** Pieces of a garnish in one slice, on average. Chance decides each slice. */
export interface PiecesPerSlice {
  /** Whole pieces' worth within the slice. */
  readonly within: number;
  /** Seen on one cut face. A strip that runs along is seen once each. */
  readonly onFace: number;
}

/**
 * Pieces in a slice: garnish volume ÷ volume of a piece; on a cut face, pieces in a volume × mean calliper width.
 * Derived; for the face, stereology.
 *
 * @returns null for what is no share, size or slice
 * @example 15 % of cubes of 10 mm in a slice of 95 × 65 × 12 mm: 11.1 within, 13.9 on the face
 */
export function piecesPerSlice(given: Scattered): PiecesPerSlice | null {
  const { volumeFraction, shape, sizeMm, faceMm2, sliceMm } = given;
  if (![sizeMm, faceMm2, sliceMm].every((value) => value > 0 && Number.isFinite(value))) return null;
  if (!(volumeFraction >= 0) || !(volumeFraction <= 1)) return null;
  const within = (volumeFraction * faceMm2 * sliceMm) / 1000 / pieceMl(shape, sizeMm, sliceMm);
  const onFace = shape === 'strip' ? within : (within / sliceMm) * calliperMm(shape, sizeMm);
  return { within, onFace };
}

import { entryValue } from '../../quantities/index.ts';
import { readMould } from '../read-mould.ts';
import type { MouldItem } from '../slice.ts';
import { caulG, type SlicedLining, slicedLining, slicesAcross } from './lining-pieces.ts';
import type { CrustSlice } from './slice.ts';

/** What lines one mould inside the crust, or in its place. */
export interface Lining {
  /** Slices across; null while their width is unknown. */
  readonly slices: number | null;
  /** What those weigh and bring; null while the weight of one is unknown. */
  readonly sliced: SlicedLining | null;
  readonly caul: { readonly minG: number; readonly maxG: number } | null;
}

/** Slices and caul of one mould. Lengths as the mould has them: a crust takes little of what slices overlap. */
export function liningOf(slice: CrustSlice, mould: MouldItem): Lining {
  const mm = (name: keyof MouldItem['dimensions']) => entryValue('length', mould.dimensions[name]);
  const lengthMm = mm('length') ?? mm('diameter');
  const pieceMm = entryValue('length', slice.pieceWidth);
  const overlapMm = entryValue('length', slice.pieceOverlap);
  const slices =
    lengthMm === null || pieceMm === null || overlapMm === null
      ? null
      : slicesAcross(lengthMm, pieceMm, overlapMm);
  const pieceG = entryValue('mass', slice.pieceMass);
  return {
    slices,
    sliced:
      slices === null || pieceG === null
        ? null
        : slicedLining(slices, pieceG, entryValue('fraction', slice.pieceSalt)),
    caul: caulG(brimMl(mould) ?? Number.NaN),
  };
}

/** To the rim: by water where that was weighed, else by the measures. */
function brimMl(mould: MouldItem): number | null {
  const { waterFillMl, geometry } = readMould(mould);
  if (waterFillMl !== null) return waterFillMl;
  return geometry === null ? null : geometry.volumeToMm3(geometry.depthMm) / 1000;
}

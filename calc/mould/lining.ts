import type { MouldGeometry } from './shapes/geometry.ts';
import type { LiningKind } from './slice.ts';

/** Density of backfat, g/mL. Common practice, no source. */
export const FAT_DENSITY_G_PER_ML = 0.93;

/** Linings thick enough to take room from the fill. Film, parchment and the like do not. */
const TAKES_ROOM: readonly LiningKind[] = ['fat', 'bacon', 'caul', 'leaf'];

/** Whether a lining takes room, so that its thickness must be known. */
export function takesRoom(kind: LiningKind): boolean {
  return TAKES_ROOM.includes(kind);
}

/**
 * Room a lining takes on bottom, walls and folded over the top of the fill, mL: area × thickness.
 * Corners are counted twice, as the overlapping joins of a real lining are.
 *
 * @example 2 mm on all faces of 290 × 95 × 75 mm takes 226 mL
 */
export function liningVolumeMl(geometry: MouldGeometry, fillDepthMm: number, thicknessMm: number): number {
  const areaMm2 = geometry.wallsToMm2(fillDepthMm) + geometry.surfaceAtMm2(fillDepthMm);
  return (areaMm2 * thicknessMm) / 1000;
}

/**
 * Grams of fat sheet for one mould: bottom, walls to the rim and the lid, × thickness × 0.93 g/mL.
 * Offcuts come on top. Common practice, no source.
 */
export function fatLiningG(geometry: MouldGeometry, thicknessMm: number): number {
  return liningVolumeMl(geometry, geometry.depthMm, thicknessMm) * FAT_DENSITY_G_PER_ML;
}

/** How far a lining reaches past the rim at each side, and how it closes, mm. Common practice, no source. */
const FAT_LID_TUCK_MM = 20;
const FAT_END_MM = 20;
const BACON_TUCK_MM = 20;
const CAUL_OVERLAP_MM = 40;
const FILM_OVERLAP_MM = 100;
const PARCHMENT_TAB_MM = 40;

/**
 * Sheet to cut for one mould, mm: across the mould and along it. Fat meets over the middle with a
 * tuck; bacon covers the top twice; caul, film and parchment hang over. Common practice, no source.
 *
 * @returns null for a lining that is not one sheet, and for none
 * @example fat for 290 × 95 × 75 mm: 380 across, 480 along
 */
export function liningSheetMm(
  kind: LiningKind,
  geometry: MouldGeometry,
): { readonly acrossMm: number; readonly alongMm: number } | null {
  const { girthAcrossMm: across, girthAlongMm: along, depthMm } = geometry;
  const rim = geometry.planAtMm(depthMm);
  switch (kind) {
    case 'fat':
      return { acrossMm: across + rim.widthMm + 2 * FAT_LID_TUCK_MM, alongMm: along + 2 * FAT_END_MM };
    case 'bacon':
      return { acrossMm: across + 2 * (rim.widthMm + BACON_TUCK_MM), alongMm: rim.lengthMm };
    case 'caul':
      return {
        acrossMm: across + rim.widthMm + CAUL_OVERLAP_MM,
        alongMm: along + CAUL_OVERLAP_MM,
      };
    case 'film':
      return { acrossMm: across + 2 * FILM_OVERLAP_MM, alongMm: along + 2 * FILM_OVERLAP_MM };
    case 'parchment':
      return { acrossMm: across + 2 * PARCHMENT_TAB_MM, alongMm: rim.lengthMm };
    case 'leaf':
    case 'none':
      return null;
  }
}

import { liningVolumeMl } from './lining.ts';
import type { MouldGeometry } from './shapes/geometry.ts';

/** A mould about to be filled. Lengths in mm, volumes in mL, density in g/mL. */
export interface FillPlan {
  readonly geometry: MouldGeometry;
  /** Water that fills it to the rim; outranks the measures. Null when nobody filled it. */
  readonly waterFillMl: number | null;
  readonly headspaceMm: number;
  /** 0 for a bare mould or a lining of no thickness to speak of. */
  readonly liningThicknessMm: number;
  readonly densityGPerMl: number;
}

export interface Fill {
  /** To the rim, by water where measured, otherwise by the measures. */
  readonly brimMl: number;
  /** By the measures alone. */
  readonly calculatedBrimMl: number;
  readonly fillDepthMm: number;
  readonly liningMl: number;
  /** Forcemeat, lining and headspace taken off. */
  readonly fillMl: number;
  readonly fillG: number;
}

/**
 * What goes into one mould: the volume up to the headspace, less the lining, × density. A water
 * measure scales the computed volume, for only water knows rounded corners and fluted walls.
 *
 * @returns null when the headspace leaves no depth, the lining leaves no room, or a number is unusable
 * @example 290 × 95 × 75 mm, headspace 10 mm, 1.04 g/mL: 1,791 mL and 1,862 g
 */
export function fillOf(plan: FillPlan): Fill | null {
  const { geometry, waterFillMl, headspaceMm, liningThicknessMm, densityGPerMl } = plan;
  const numbers = [headspaceMm, liningThicknessMm, densityGPerMl, waterFillMl ?? 1];
  if (!numbers.every(Number.isFinite)) return null;
  if (headspaceMm < 0 || liningThicknessMm < 0 || densityGPerMl <= 0 || (waterFillMl ?? 1) <= 0) return null;
  const fillDepthMm = geometry.depthMm - headspaceMm;
  if (fillDepthMm <= 0) return null;

  const calculatedBrimMl = geometry.volumeToMm3(geometry.depthMm) / 1000;
  const brimMl = waterFillMl ?? calculatedBrimMl;
  const liningMl = liningVolumeMl(geometry, fillDepthMm, liningThicknessMm);
  const toHeadspaceMl = (geometry.volumeToMm3(fillDepthMm) / 1000) * (brimMl / calculatedBrimMl);
  const fillMl = toHeadspaceMl - liningMl;
  if (fillMl <= 0) return null;
  return { brimMl, calculatedBrimMl, fillDepthMm, liningMl, fillMl, fillG: fillMl * densityGPerMl };
}

import type { MouldGeometry } from './geometry.ts';

/**
 * A standing mould of oval or round plan with straight walls.
 *
 * @example upright({ lengthMm: 190, widthMm: 130, depthMm: 75 }).volumeToMm3(75) // 1 454 955 mm³ = 1.45 L
 */
export function upright(plan: {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly depthMm: number;
}): MouldGeometry {
  const { lengthMm, widthMm, depthMm } = plan;
  const areaMm2 = (Math.PI / 4) * lengthMm * widthMm;
  const aroundMm = ellipsePerimeterMm(lengthMm, widthMm);
  return {
    depthMm,
    volumeToMm3: (h) => areaMm2 * h,
    wallsToMm2: (h) => areaMm2 + aroundMm * h,
    surfaceAtMm2: () => areaMm2,
    planAtMm: () => ({ lengthMm, widthMm }),
    girthAcrossMm: widthMm + 2 * depthMm,
    girthAlongMm: lengthMm + 2 * depthMm,
    closed: false,
  };
}

/** Perimeter of an ellipse from its two diameters, by Ramanujan's second approximation. Derived. */
function ellipsePerimeterMm(lengthMm: number, widthMm: number): number {
  const a = lengthMm / 2;
  const b = widthMm / 2;
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

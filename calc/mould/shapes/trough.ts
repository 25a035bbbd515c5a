import type { MouldGeometry } from './geometry.ts';

/** Area of a circle of radius r filled to a depth, mm²; 0 for a radius of 0. Derived: circular segment. */
export function circularSegmentMm2(radiusMm: number, depthMm: number): number {
  if (!(radiusMm > 0)) return 0;
  const above = radiusMm - depthMm;
  const halfChord = Math.sqrt(Math.max(0, depthMm * (2 * radiusMm - depthMm)));
  return radiusMm ** 2 * Math.acos(clampToOne(above / radiusMm)) - above * halfChord;
}

/**
 * A round trough lying on its side: a half-cylinder filled to its radius, or a whole roll filled to
 * its diameter.
 *
 * @param depthMm from the lowest line to the rim: the radius for a half-cylinder
 * @param closed a whole roll has no rim
 * @example roundTrough({ radiusMm: 40, lengthMm: 300, depthMm: 40, closed: false }).volumeToMm3(40) // 753 982 mm³
 */
export function roundTrough(trough: {
  readonly radiusMm: number;
  readonly lengthMm: number;
  readonly depthMm: number;
  readonly closed: boolean;
}): MouldGeometry {
  const { radiusMm: r, lengthMm, depthMm, closed } = trough;
  const segment = (h: number) => circularSegmentMm2(r, h);
  const arc = (h: number) => 2 * r * Math.acos(clampToOne((r - h) / r));
  const chord = (h: number) => 2 * Math.sqrt(Math.max(0, h * (2 * r - h)));
  return {
    depthMm,
    volumeToMm3: (h) => segment(h) * lengthMm,
    wallsToMm2: (h) => arc(h) * lengthMm + 2 * segment(h),
    surfaceAtMm2: (h) => chord(h) * lengthMm,
    planAtMm: (h) => ({ lengthMm, widthMm: chord(h) }),
    girthAcrossMm: arc(depthMm),
    girthAlongMm: lengthMm + 2 * depthMm,
    closed,
  };
}

/**
 * A roof mould: triangular section, filled from its edge. To a depth d it holds (d ÷ h)² of the whole.
 *
 * @example roofTrough({ widthMm: 75, depthMm: 70, lengthMm: 300 }).volumeToMm3(35) // a quarter of 787 500 mm³
 */
export function roofTrough(roof: {
  readonly widthMm: number;
  readonly depthMm: number;
  readonly lengthMm: number;
}): MouldGeometry {
  const { widthMm, depthMm, lengthMm } = roof;
  const widthAt = (h: number) => (widthMm * h) / depthMm;
  const section = (h: number) => (widthAt(h) * h) / 2;
  const slope = (h: number) => Math.hypot(h, widthAt(h) / 2);
  return {
    depthMm,
    volumeToMm3: (h) => section(h) * lengthMm,
    wallsToMm2: (h) => 2 * slope(h) * lengthMm + 2 * section(h),
    surfaceAtMm2: (h) => widthAt(h) * lengthMm,
    planAtMm: (h) => ({ lengthMm, widthMm: widthAt(h) }),
    girthAcrossMm: 2 * slope(depthMm),
    girthAlongMm: lengthMm + 2 * depthMm,
    closed: false,
  };
}

/** Rounding may put a cosine a hair outside −1…1. */
function clampToOne(value: number): number {
  return Math.min(1, Math.max(-1, value));
}

import type { MouldGeometry } from './geometry.ts';

/** Inside measures of a tin whose walls lean, mm. */
export interface TaperedMeasures {
  readonly topLengthMm: number;
  readonly topWidthMm: number;
  readonly baseLengthMm: number;
  readonly baseWidthMm: number;
  readonly depthMm: number;
}

/**
 * A box with flat, leaning walls. Its volume to any depth is exact by the prismatoid rule
 * V = h ÷ 6 × (base + 4 × middle + top); the mean of base and top reads too much.
 * With equal base and top it is the rectangular mould.
 *
 * @example tapered({ topLengthMm: 250, topWidthMm: 110, baseLengthMm: 230, baseWidthMm: 95, depthMm: 75 })
 *   .volumeToMm3(75) // 1 846 875 mm³ = 1.85 L
 */
export function tapered(measures: TaperedMeasures): MouldGeometry {
  const { topLengthMm, topWidthMm, baseLengthMm, baseWidthMm, depthMm } = measures;
  const lengthAt = (h: number) => baseLengthMm + ((topLengthMm - baseLengthMm) * h) / depthMm;
  const widthAt = (h: number) => baseWidthMm + ((topWidthMm - baseWidthMm) * h) / depthMm;
  const areaAt = (h: number) => lengthAt(h) * widthAt(h);
  const slant = (h: number, spread: number) => Math.hypot(h, spread / 2);
  return {
    depthMm,
    volumeToMm3: (h) => (h / 6) * (areaAt(0) + 4 * areaAt(h / 2) + areaAt(h)),
    wallsToMm2: (h) =>
      areaAt(0) +
      (baseLengthMm + lengthAt(h)) * slant(h, widthAt(h) - baseWidthMm) +
      (baseWidthMm + widthAt(h)) * slant(h, lengthAt(h) - baseLengthMm),
    surfaceAtMm2: areaAt,
    planAtMm: (h) => ({ lengthMm: lengthAt(h), widthMm: widthAt(h) }),
    girthAcrossMm: baseWidthMm + 2 * slant(depthMm, topWidthMm - baseWidthMm),
    girthAlongMm: baseLengthMm + 2 * slant(depthMm, topLengthMm - baseLengthMm),
    closed: false,
  };
}

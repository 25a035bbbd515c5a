import { dimensionsOf } from './dimensions-of.ts';
import type { Measures, MouldGeometry } from './shapes/geometry.ts';
import { tapered } from './shapes/tapered.ts';
import { roofTrough, roundTrough } from './shapes/trough.ts';
import { upright } from './shapes/upright.ts';
import type { MouldShape } from './slice.ts';

/**
 * The geometry of a mould from its inside measures, mm.
 *
 * @returns null when a measure the shape needs is missing, not a number or not above 0, or when a
 *   cylinder has both a depth (it stands) and a length (it lies)
 * @example mouldGeometry('rectangular', { length: 290, width: 95, depth: 75 })?.volumeToMm3(75) // 2 066 250
 */
export function mouldGeometry(shape: MouldShape, measures: Measures): MouldGeometry | null {
  const { needed, oneOf } = dimensionsOf(shape);
  const given = oneOf.filter((dimension) => measures[dimension] !== undefined);
  if (oneOf.length > 0 && given.length !== 1) return null;
  if (![...needed, ...given].every((dimension) => isLength(measures[dimension]))) return null;

  const { length = 0, width = 0, depth = 0, baseLength = 0, baseWidth = 0, diameter = 0 } = measures;
  switch (shape) {
    case 'rectangular':
      return tapered({
        topLengthMm: length,
        topWidthMm: width,
        baseLengthMm: length,
        baseWidthMm: width,
        depthMm: depth,
      });
    case 'tapered':
      return tapered({
        topLengthMm: length,
        topWidthMm: width,
        baseLengthMm: baseLength,
        baseWidthMm: baseWidth,
        depthMm: depth,
      });
    case 'half-cylinder':
      return roundTrough({ radiusMm: diameter / 2, lengthMm: length, depthMm: diameter / 2, closed: false });
    case 'cylinder':
      return measures.depth === undefined
        ? roundTrough({ radiusMm: diameter / 2, lengthMm: length, depthMm: diameter, closed: true })
        : upright({ lengthMm: diameter, widthMm: diameter, depthMm: depth });
    case 'roof':
      return roofTrough({ widthMm: width, depthMm: depth, lengthMm: length });
    case 'oval':
      return upright({ lengthMm: length, widthMm: width, depthMm: depth });
  }
}

function isLength(value: number | undefined): boolean {
  return value !== undefined && Number.isFinite(value) && value > 0;
}

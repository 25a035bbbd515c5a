import type { HeatShape } from '../heat/index.ts';
import { circularSegmentMm2, type Measures, type MouldShape } from '../mould/index.ts';

/**
 * What fills a mould up to a depth, as a body of heat. A round trough filled short of its middle or a roll short of
 * its top counts as one of the same shape and area: more compact, so rather slower.
 *
 * @param measures inside measures, mm, complete for the shape
 * @param fillDepthMm from the lowest point, above 0
 */
export function fillShape(mould: MouldShape, measures: Measures, fillDepthMm: number): HeatShape {
  const { length = 0, width = 0, depth = 0, baseLength = 0, baseWidth = 0, diameter = 0 } = measures;
  switch (mould) {
    case 'rectangular':
      return { kind: 'rectangular', lengthMm: length, widthMm: width, depthMm: fillDepthMm };
    case 'tapered': {
      const rise = fillDepthMm / depth;
      return {
        kind: 'tapered',
        lengthMm: baseLength + (length - baseLength) * rise,
        widthMm: baseWidth + (width - baseWidth) * rise,
        depthMm: fillDepthMm,
        baseLengthMm: baseLength,
        baseWidthMm: baseWidth,
      };
    }
    case 'half-cylinder': {
      const areaMm2 = circularSegmentMm2(diameter / 2, fillDepthMm);
      return { kind: 'half-cylinder', lengthMm: length, diameterMm: 2 * Math.sqrt((2 * areaMm2) / Math.PI) };
    }
    case 'cylinder': {
      if (measures.depth !== undefined)
        return { kind: 'standing-cylinder', diameterMm: diameter, depthMm: fillDepthMm };
      const areaMm2 = circularSegmentMm2(diameter / 2, Math.min(diameter, fillDepthMm));
      return { kind: 'cylinder', lengthMm: length, diameterMm: 2 * Math.sqrt(areaMm2 / Math.PI) };
    }
    case 'roof':
      return { kind: 'roof', lengthMm: length, widthMm: (width * fillDepthMm) / depth, depthMm: fillDepthMm };
    case 'oval':
      return { kind: 'oval', lengthMm: length, widthMm: width, depthMm: fillDepthMm };
  }
}

/** The body left inside a lining of one thickness all round. Null when it leaves none. */
export function insideLining(shape: HeatShape, liningMm: number): HeatShape | null {
  const inside = shrunk(shape, 2 * liningMm);
  const sound = Object.values(inside).every((value) => typeof value !== 'number' || value > 0);
  return sound ? inside : null;
}

function shrunk(shape: HeatShape, offMm: number): HeatShape {
  switch (shape.kind) {
    case 'rectangular':
    case 'oval':
      return {
        ...shape,
        lengthMm: shape.lengthMm - offMm,
        widthMm: shape.widthMm - offMm,
        depthMm: shape.depthMm - offMm,
      };
    case 'tapered': {
      const { baseLengthMm = shape.lengthMm, baseWidthMm = shape.widthMm } = shape;
      return {
        kind: 'tapered',
        lengthMm: shape.lengthMm - offMm,
        widthMm: shape.widthMm - offMm,
        depthMm: shape.depthMm - offMm,
        baseLengthMm: baseLengthMm - offMm,
        baseWidthMm: baseWidthMm - offMm,
      };
    }
    case 'standing-cylinder':
      return { ...shape, diameterMm: shape.diameterMm - offMm, depthMm: shape.depthMm - offMm };
    case 'half-cylinder': {
      // Inside its lining a half-round is filled short of its middle.
      const radiusMm = (shape.diameterMm - offMm) / 2;
      const areaMm2 = circularSegmentMm2(radiusMm, Math.max(0, radiusMm - offMm / 2));
      return {
        ...shape,
        lengthMm: shape.lengthMm - offMm,
        diameterMm: 2 * Math.sqrt((2 * areaMm2) / Math.PI),
      };
    }
    case 'cylinder':
      return { ...shape, lengthMm: shape.lengthMm - offMm, diameterMm: shape.diameterMm - offMm };
    case 'roof': {
      // A triangle moved in on all three sides is the same triangle, smaller by the lining over its inner circle.
      const slope = Math.hypot(shape.depthMm, shape.widthMm / 2);
      const innerRadiusMm = (shape.widthMm * shape.depthMm) / (shape.widthMm + 2 * slope);
      const share = 1 - offMm / 2 / innerRadiusMm;
      return {
        ...shape,
        lengthMm: shape.lengthMm - offMm,
        widthMm: shape.widthMm * share,
        depthMm: shape.depthMm * share,
      };
    }
    case 'cube':
      return { ...shape, sideMm: shape.sideMm - offMm };
    case 'slab':
      return { ...shape, thicknessMm: shape.thicknessMm - offMm };
  }
}

/** Volume of a body, mL. A slab is told per square metre. */
export function volumeOfShapeMl(shape: HeatShape): number {
  switch (shape.kind) {
    case 'rectangular':
      return (shape.lengthMm * shape.widthMm * shape.depthMm) / 1000;
    case 'tapered': {
      const { lengthMm, widthMm, depthMm, baseLengthMm = lengthMm, baseWidthMm = widthMm } = shape;
      const middle = ((lengthMm + baseLengthMm) / 2) * ((widthMm + baseWidthMm) / 2);
      return ((depthMm / 6) * (lengthMm * widthMm + 4 * middle + baseLengthMm * baseWidthMm)) / 1000;
    }
    case 'standing-cylinder':
      return ((Math.PI / 4) * shape.diameterMm ** 2 * shape.depthMm) / 1000;
    case 'oval':
      return ((Math.PI / 4) * shape.lengthMm * shape.widthMm * shape.depthMm) / 1000;
    case 'half-cylinder':
      return ((Math.PI / 8) * shape.diameterMm ** 2 * shape.lengthMm) / 1000;
    case 'cylinder':
      return ((Math.PI / 4) * shape.diameterMm ** 2 * shape.lengthMm) / 1000;
    case 'roof':
      return (shape.widthMm * shape.depthMm * shape.lengthMm) / 2000;
    case 'cube':
      return shape.sideMm ** 3 / 1000;
    case 'slab':
      return shape.thicknessMm * 1000;
  }
}

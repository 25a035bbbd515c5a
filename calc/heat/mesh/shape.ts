import { discSection } from './disc-section.ts';
import { roofSection, trapezoidSection } from './grid-section.ts';
import { type Solid, solidOf } from './solid.ts';

/**
 * The body of food, in mm. Lying shapes have their length along; `standing-cylinder` and `oval` stand
 * with upright walls. A roof lies point down, flat side up; a half-cylinder flat side up.
 */
export type HeatShape =
  | {
      readonly kind: 'rectangular';
      readonly lengthMm: number;
      readonly widthMm: number;
      readonly depthMm: number;
    }
  | {
      readonly kind: 'tapered';
      readonly lengthMm: number;
      readonly widthMm: number;
      readonly depthMm: number;
      /** Without them the ends or the sides are straight. */
      readonly baseLengthMm?: number;
      readonly baseWidthMm?: number;
    }
  | { readonly kind: 'cube'; readonly sideMm: number }
  | { readonly kind: 'slab'; readonly thicknessMm: number }
  | { readonly kind: 'half-cylinder'; readonly lengthMm: number; readonly diameterMm: number }
  | { readonly kind: 'cylinder'; readonly lengthMm: number; readonly diameterMm: number }
  | { readonly kind: 'standing-cylinder'; readonly diameterMm: number; readonly depthMm: number }
  | { readonly kind: 'roof'; readonly lengthMm: number; readonly widthMm: number; readonly depthMm: number }
  | { readonly kind: 'oval'; readonly lengthMm: number; readonly widthMm: number; readonly depthMm: number };

/** A slab has so few cells that none need be saved. */
const LEAST_SLAB = 6;
/** A slab has no sides: it is modelled a metre wide and long, its sides letting nothing through. */
const SLAB_REACH_M = 1;

/**
 * The net of a shape. `fineness` is how many cells span the shortest way through the body; cells along
 * the length are `LENGTHWISE` times longer. `refine` cuts each of those cells that many times each way.
 * `smooth` is how many layers do along a lying body whose field is smooth; null where a front may pass.
 * `sketch` lets round and pointed bodies have as few cells as the preview can do with.
 */
export function solidOfShape(
  shape: HeatShape,
  fineness: number,
  refine: 1 | 2 = 1,
  smooth: number | null = null,
  sketch = false,
): Solid {
  const count = (wanted: number, least: number) =>
    refine * Math.min(MOST_CELLS, Math.max(least, Math.round(wanted)));
  /** Even, so that a node lies at mid-height. */
  const evenCount = (wanted: number, least: number) =>
    refine * Math.min(MOST_CELLS, Math.max(least, 2 * Math.round(wanted / 2)));
  return drawn(shape, fineness, { count, evenCount, smooth, least: sketch ? SKETCH : LEAST });
}

/** However long or flat a body is, no more cells than this lie along one way. */
const MOST_CELLS = 40;

/** Height of a body as it stands in its mould, mm. */
export function heightMm(shape: HeatShape): number {
  switch (shape.kind) {
    case 'cube':
      return shape.sideMm;
    case 'slab':
      return shape.thicknessMm;
    case 'half-cylinder':
      return shape.diameterMm / 2;
    case 'cylinder':
      return shape.diameterMm;
    default:
      return shape.depthMm;
  }
}

interface Counts {
  readonly count: (wanted: number, least: number) => number;
  readonly evenCount: (wanted: number, least: number) => number;
  readonly smooth: number | null;
  readonly least: Least;
}

function drawn(shape: HeatShape, fineness: number, counts: Counts): Solid {
  const { count, evenCount, least } = counts;
  switch (shape.kind) {
    case 'slab':
      return slab(shape.thicknessMm / 1000, fineness, counts);
    case 'cube':
      return loaf(shape.sideMm, shape.sideMm, shape.sideMm, shape.sideMm, 1, CUBE_SHARE * fineness, counts);
    case 'rectangular':
      return loaf(shape.lengthMm, shape.widthMm, shape.widthMm, shape.depthMm, 1, fineness, counts);
    case 'tapered': {
      const { lengthMm, widthMm, depthMm, baseLengthMm = lengthMm, baseWidthMm = widthMm } = shape;
      const mean = (lengthMm + baseLengthMm) / 2;
      return loaf(mean, baseWidthMm, widthMm, depthMm, baseLengthMm / lengthMm, fineness, counts);
    }
    case 'roof': {
      const cell = (ROOF_SHARE * 2 * inradius(shape.widthMm, shape.depthMm)) / fineness;
      const rows = evenCount(shape.depthMm / cell, least.roofRows);
      const section = roofSection(shape.widthMm / 1000, shape.depthMm / 1000, rows);
      return solidOf(section, { extrusion: 'lying', ...lengthwise(shape.lengthMm, cell, counts) });
    }
    case 'half-cylinder':
    case 'cylinder': {
      const full = shape.kind === 'cylinder';
      const radius = shape.diameterMm / 2000;
      const perRadius = fineness * DISC_SHARE;
      const rings = count(perRadius, full ? least.rings : least.halfRings);
      const section = discSection(
        {
          acrossRadius: radius,
          upRadius: radius,
          centreY: radius,
          startEighth: -2,
          eighths: full ? 4 : 2,
          endFace: full ? null : 'top',
        },
        rings,
      );
      return solidOf(section, {
        extrusion: 'lying',
        ...lengthwise(shape.lengthMm, (radius * 1000) / perRadius, counts),
      });
    }
    case 'standing-cylinder':
      return standing(
        shape.diameterMm,
        shape.diameterMm,
        shape.depthMm,
        Math.max(fineness, least.standing),
        counts,
      );
    case 'oval':
      return standing(shape.lengthMm, shape.widthMm, shape.depthMm, fineness, counts);
  }
}

/** Cells along the length over cells across: the ends are far from the core. */
const LENGTHWISE = 2;
/** A cube errs alike in three directions, and needs few nodes. */
const CUBE_SHARE = 4 / 3;
/** The way through a roof is the circle within it; its corners are warm and need less. */
const ROOF_SHARE = 1.25;
/** Fewer cells than these do not do, however coarse the rest. */
interface Least {
  /** Fewer rings do not find the water line on a full disc. */
  readonly rings: number;
  readonly halfRings: number;
  /** Fewer rows do not follow the point of a roof. */
  readonly roofRows: number;
  /** A pot part-way under water errs alike in all its cells, and needs this many through. */
  readonly standing: number;
}
const LEAST: Least = { rings: 5, halfRings: 4, roofRows: 8, standing: 5 };
const SKETCH: Least = { rings: 3, halfRings: 4, roofRows: 7, standing: 3 };
/** Rings of a disc or a half-disc for each cell of `fineness`. */
const DISC_SHARE = 0.85;

const inradius = (widthMm: number, depthMm: number) =>
  (widthMm * depthMm) / (widthMm + 2 * Math.hypot(widthMm / 2, depthMm));

function lengthwise(lengthMm: number, cellMm: number, { count, smooth }: Counts) {
  if (smooth !== null) return { reachM: lengthMm / 2000, cells: smooth - 1, smooth: true };
  return { reachM: lengthMm / 2000, cells: count(lengthMm / 2 / (LENGTHWISE * cellMm), 3) };
}

function loaf(
  lengthMm: number,
  bottomMm: number,
  topMm: number,
  depthMm: number,
  baseShare: number,
  fineness: number,
  counts: Counts,
): Solid {
  const { count, evenCount } = counts;
  const widthMm = (bottomMm + topMm) / 2;
  const cell = Math.min(widthMm, depthMm, lengthMm) / fineness;
  const section = trapezoidSection(
    { bottomWidth: bottomMm / 1000, topWidth: topMm / 1000, depth: depthMm / 1000 },
    count(widthMm / 2 / cell, 2),
    evenCount(depthMm / cell, 4),
  );
  const along = lengthwise(lengthMm, lengthMm > 1.5 * widthMm ? cell : cell / LENGTHWISE, counts);
  return solidOf(section, { extrusion: 'lying', ...along, baseShare });
}

function standing(
  lengthMm: number,
  widthMm: number,
  depthMm: number,
  fineness: number,
  { count, evenCount }: Counts,
): Solid {
  const cell = Math.min(lengthMm, widthMm, depthMm) / fineness;
  const rings = count(Math.max(widthMm / 2 / cell, lengthMm / 2 / (LENGTHWISE * cell)), 3);
  const section = discSection(
    {
      acrossRadius: lengthMm / 2000,
      upRadius: widthMm / 2000,
      centreY: 0,
      startEighth: 0,
      eighths: 2,
      endFace: null,
    },
    rings,
  );
  return solidOf(section, {
    extrusion: 'standing',
    reachM: depthMm / 1000,
    cells: evenCount(depthMm / cell, 4),
  });
}

function slab(thicknessM: number, fineness: number, { evenCount }: Counts): Solid {
  const across = { bottomWidth: SLAB_REACH_M, topWidth: SLAB_REACH_M, depth: thicknessM };
  const solid = solidOf(trapezoidSection(across, 1, evenCount(Math.max(fineness, LEAST_SLAB), 4)), {
    extrusion: 'lying',
    reachM: SLAB_REACH_M,
    cells: 1,
  });
  return { ...solid, patches: solid.patches.filter(({ face }) => face === 'top' || face === 'bottom') };
}

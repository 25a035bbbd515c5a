import type { MouldDimension, MouldShape } from '@larderwright/calc/mould';

/** Inside measures of a mould as far as they are known, mm. */
export type KnownMeasures = Readonly<Partial<Record<MouldDimension, number>>>;

/** Proportions of a usual mould, mm: they stand in for a measure that is not known yet, in broken line. */
const USUAL: Readonly<Record<MouldDimension, number>> = {
  length: 280,
  width: 95,
  depth: 75,
  baseLength: 255,
  baseWidth: 80,
  diameter: 80,
};

/** A closed outline in mm, origin at the top left of its own box, as an SVG path. */
export interface Outline {
  readonly path: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What is drawn of a mould: cut across, and seen from above. All in mm. */
export interface MouldOutline {
  /** Cut across, rim at the top. */
  readonly section: Outline;
  /** Seen from above, length to the right. */
  readonly plan: Outline;
  /** The base as seen from above, where it is smaller than the rim. */
  readonly base: { readonly path: string } | null;
  /** A whole roll, closed all round. */
  readonly roll: boolean;
  /** False while any needed measure is only assumed. */
  readonly known: boolean;
  /** The measure each edge of the drawing shows. */
  readonly edges: {
    readonly across: MouldDimension;
    readonly down: MouldDimension;
    readonly along: MouldDimension;
  };
}

const rectangle = (widthMm: number, heightMm: number, x = 0, y = 0) =>
  `M${x} ${y}h${widthMm}v${heightMm}h${-widthMm}z`;

const ellipse = (widthMm: number, heightMm: number) => {
  const [rx, ry] = [widthMm / 2, heightMm / 2];
  return `M0 ${ry}a${rx} ${ry} 0 0 1 ${widthMm} 0a${rx} ${ry} 0 0 1 ${-widthMm} 0z`;
};

/**
 * The outlines of a mould. A measure that is missing or not above zero is drawn in usual proportion, so that
 * the drawing can say which measure is which before any is taken.
 */
export function mouldOutline(shape: MouldShape, measures: KnownMeasures): MouldOutline {
  let known = true;
  const of = (dimension: MouldDimension): number => {
    const value = measures[dimension];
    if (value !== undefined && Number.isFinite(value) && value > 0) return value;
    known = false;
    return USUAL[dimension];
  };
  const box = (path: string, widthMm: number, heightMm: number): Outline => ({ path, widthMm, heightMm });

  switch (shape) {
    case 'rectangular':
    case 'oval': {
      const [length, width, depth] = [of('length'), of('width'), of('depth')];
      const plan = shape === 'oval' ? ellipse(length, width) : rectangle(length, width);
      return {
        section: box(rectangle(width, depth), width, depth),
        plan: box(plan, length, width),
        base: null,
        roll: false,
        known,
        edges: { across: 'width', down: 'depth', along: 'length' },
      };
    }
    case 'tapered': {
      const [length, width, depth] = [of('length'), of('width'), of('depth')];
      const [baseLength, baseWidth] = [of('baseLength'), of('baseWidth')];
      // A base wider than the rim is drawn as it was typed; the box must hold both.
      const wide = Math.max(width, baseWidth);
      const long = Math.max(length, baseLength);
      const top = (wide - width) / 2;
      const bottom = (wide - baseWidth) / 2;
      return {
        section: box(`M${top} 0h${width}L${bottom + baseWidth} ${depth}h${-baseWidth}z`, wide, depth),
        plan: box(rectangle(length, width, (long - length) / 2, (wide - width) / 2), long, wide),
        base: { path: rectangle(baseLength, baseWidth, (long - baseLength) / 2, (wide - baseWidth) / 2) },
        roll: false,
        known,
        edges: { across: 'width', down: 'depth', along: 'length' },
      };
    }
    case 'half-cylinder': {
      const [length, diameter] = [of('length'), of('diameter')];
      const r = diameter / 2;
      return {
        section: box(`M0 0h${diameter}a${r} ${r} 0 0 1 ${-diameter} 0z`, diameter, r),
        plan: box(rectangle(length, diameter), length, diameter),
        base: null,
        roll: false,
        known,
        edges: { across: 'diameter', down: 'diameter', along: 'length' },
      };
    }
    case 'cylinder': {
      const lies = measures.length !== undefined && measures.depth === undefined;
      const diameter = of('diameter');
      const long = of(lies ? 'length' : 'depth');
      const round = box(ellipse(diameter, diameter), diameter, diameter);
      return {
        section: lies ? round : box(rectangle(diameter, long), diameter, long),
        plan: lies ? box(rectangle(long, diameter), long, diameter) : round,
        base: null,
        roll: lies,
        known,
        edges: {
          across: 'diameter',
          down: lies ? 'diameter' : 'depth',
          along: lies ? 'length' : 'diameter',
        },
      };
    }
    case 'roof': {
      const [length, width, depth] = [of('length'), of('width'), of('depth')];
      return {
        section: box(`M0 0h${width}L${width / 2} ${depth}z`, width, depth),
        plan: box(rectangle(length, width), length, width),
        base: { path: `M0 ${width / 2}h${length}` },
        roll: false,
        known,
        edges: { across: 'width', down: 'depth', along: 'length' },
      };
    }
  }
}

/** Pixels a millimetre takes, so that both outlines of one mould fit side by side or one above the other. */
export function drawingScale(outline: MouldOutline, roomPx: { width: number; height: number }): number {
  const widest = Math.max(outline.plan.widthMm, outline.section.widthMm);
  const high = outline.plan.heightMm + outline.section.heightMm;
  return Math.min(roomPx.width / widest, roomPx.height / high);
}

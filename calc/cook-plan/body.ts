import type { HeatShape } from '../heat/index.ts';
import {
  type Measures,
  type MouldGeometry,
  type MouldItem,
  mouldGeometry,
  readMould,
} from '../mould/index.ts';
import { entryValue } from '../quantities/index.ts';
import { fillShape, insideLining, volumeOfShapeMl } from './fill-shape.ts';

/** One filled mould as heat sees it. Lengths in mm. */
export interface MouldBody {
  /** The mix itself, inside its lining. */
  readonly shape: HeatShape;
  readonly volumeMl: number;
  /** From the base of the mix to its top. */
  readonly mixDepthMm: number;
  /** Up to the headspace, lining and all. */
  readonly fillDepthMm: number;
  readonly headspaceMm: number;
  readonly liningMm: number;
  /** Plan at the rim: along, across, and its area. */
  readonly rim: { readonly lengthMm: number; readonly widthMm: number; readonly areaMm2: number };
  /** A roll tied all round. */
  readonly closed: boolean;
}

/** Other measures than the mould's own, mm, to see what a change would do. */
export interface BodyChange {
  readonly depthMm?: number;
}

/**
 * The body of food in a mould, from the same reading of its fields as the mould's own fill. Where water says that
 * the mould holds more than its measures, the section is widened to that volume; where it says less (rounded
 * corners), the measures stay, for the middle does not notice its corners and the answer is the slower one.
 *
 * @returns null while a measure, headspace or lining is unknown or leaves no room
 */
export function mouldBody(mould: MouldItem, change: BodyChange = {}): MouldBody | null {
  const reading = readMould(mould);
  const { headspaceMm, liningThicknessMm: liningMm } = reading;
  if (reading.geometry === null || headspaceMm === null || liningMm === null) return null;
  const measures = changedMeasures(mould, change);
  const geometry = mouldGeometry(mould.shape, measures);
  if (geometry === null) return null;
  const wide = mouldGeometry(mould.shape, widened(measures, mould, reading.waterFillMl, reading.geometry));
  if (wide === null) return null;
  const fillDepthMm = wide.depthMm - headspaceMm;
  const wideMeasures = widened(measures, mould, reading.waterFillMl, reading.geometry);
  const filled = fillDepthMm > 0 ? fillShape(mould.shape, wideMeasures, fillDepthMm) : null;
  const shape = filled && insideLining(filled, liningMm);
  if (shape === null) return null;
  const plan = wide.planAtMm(geometry.closed ? wide.depthMm / 2 : wide.depthMm);
  return {
    shape,
    volumeMl: volumeOfShapeMl(shape),
    mixDepthMm: depthOfShape(shape),
    fillDepthMm,
    headspaceMm,
    liningMm,
    rim: {
      ...plan,
      areaMm2: geometry.closed ? plan.lengthMm * plan.widthMm : wide.surfaceAtMm2(wide.depthMm),
    },
    closed: geometry.closed,
  };
}

/** The measure that is a mould's depth: a half-cylinder is as deep as half its diameter, a roll as its diameter. */
export function depthMmOf(mould: MouldItem): number | null {
  return readMould(mould).geometry?.depthMm ?? null;
}

function changedMeasures(mould: MouldItem, { depthMm }: BodyChange): Measures {
  const entries = Object.entries(mould.dimensions).flatMap(([name, entry]) => {
    const mm = entryValue('length', entry);
    return mm === null || mm <= 0 ? [] : [[name, mm] as const];
  });
  const measures: Measures = Object.fromEntries(entries);
  if (depthMm === undefined) return measures;
  if (mould.shape === 'half-cylinder') return { ...measures, diameter: 2 * depthMm };
  if (mould.shape === 'cylinder' && measures.depth === undefined) return { ...measures, diameter: depthMm };
  return { ...measures, depth: depthMm };
}

/** Measures with which the mould holds what water says, where that is more than they give. */
function widened(
  measures: Measures,
  { shape }: MouldItem,
  waterFillMl: number | null,
  own: MouldGeometry,
): Measures {
  const measuredMl = own.volumeToMm3(own.depthMm) / 1000;
  const share = waterFillMl === null ? 1 : waterFillMl / measuredMl;
  if (!(share > 1)) return measures;
  const across = Math.sqrt(share);
  // A trough is widened in its section, all else in its plan; its depth stays what it is.
  const wider: readonly string[] =
    shape === 'roof'
      ? ['width', 'depth']
      : shape === 'half-cylinder' || shape === 'cylinder'
        ? ['diameter']
        : ['length', 'width', 'baseLength', 'baseWidth'];
  return Object.fromEntries(
    Object.entries(measures).map(([name, mm]) => [name, wider.includes(name) ? mm * across : mm]),
  );
}

/** From the lowest to the highest point of a body, mm. */
function depthOfShape(shape: HeatShape): number {
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

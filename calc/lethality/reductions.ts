import type { CompositionTable } from '../ingredients/index.ts';
import { isLiver } from '../ingredients/index.ts';
import { curvesOf, holdReadings } from './judge-log.ts';
import {
  type LethalityLine,
  LINE_70_Z7_5,
  LINE_70_Z10,
  LINE_90_UK,
  LINE_90_US,
  zFromPoints,
} from './lethal-rate.ts';
import { type CurvePoint, pasteurisationValue } from './pasteurisation-value.ts';
import { HEAT_RESISTANCE, type HeatResistanceRow } from './tables/heat-resistance.ts';
import type { CookLogResult } from './values.ts';

/** Meats of a mix, as the published rows name theirs. */
export type MeatKind = 'beef' | 'pork' | 'turkey' | 'chicken-liver' | 'other';

/** One published row that fits the product, as a line with its D, and where it was measured. */
export interface OrganismLine {
  readonly row: HeatResistanceRow;
  readonly line: LethalityLine;
  /** D at the line's reference, min. */
  readonly dRefMin: number;
  readonly zIsDerived: boolean;
  /** Coldest and hottest measured, °C. Below it nothing is counted, above it no more than at it. */
  readonly measuredC: readonly [number, number];
}

export interface Reduction extends OrganismLine {
  /** log10, to the end of heating, and with carry-over. */
  readonly atHeatEnd: number;
  readonly whole: number;
}

/** Rows that fit, by id of the row. What is not here fits no product of the kitchen by itself. */
const FITS: Readonly<Record<string, (meats: readonly MeatKind[], minced: boolean) => boolean>> = {
  'salmonella-ground-beef': (meats) => meats.includes('beef'),
  'ecoli-beef': (meats) => meats.includes('beef'),
  'perfringens-cells-beef': (meats) => meats.includes('beef'),
  'salmonella-chicken-liver': (meats) => meats.includes('chicken-liver'),
  'campylobacter-chicken-liver': (meats) => meats.includes('chicken-liver'),
  'salmonella-senftenberg-turkey': (meats) => meats.includes('turkey'),
  'listeria-ham': (meats, minced) => meats.includes('pork') && !minced,
  'listeria-ham-heat-shock': (meats, minced) => meats.includes('pork') && !minced,
  // A slow come-up in a meat emulsion is the terrine's own case, whatever the meat.
  'listeria-emulsion-slow': (meats, minced) => meats.length > 0 && minced,
};

/** The line through a row's points, by its printed z or the one they give; null with neither. */
function lineOf(row: HeatResistanceRow): OrganismLine | null {
  const zC = row.zC ?? zFromPoints(row.points);
  if (zC === null || row.points.length < 2) return null;
  const count = row.points.length;
  // Least squares goes through the middle of the points.
  const refC = row.points.reduce((sum, { tempC }) => sum + tempC, 0) / count;
  const logD = row.points.reduce((sum, { dMin }) => sum + Math.log10(dMin), 0) / count;
  const temps = row.points.map(({ tempC }) => tempC);
  return {
    row,
    line: { refC, zC },
    dRefMin: 10 ** logD,
    zIsDerived: row.zC === null,
    measuredC: [Math.min(...temps), Math.max(...temps)],
  };
}

/** The published rows that fit a product. */
export function organismLines(meats: readonly MeatKind[], minced: boolean): OrganismLine[] {
  return HEAT_RESISTANCE.filter(({ id }) => FITS[id]?.(meats, minced) ?? false).flatMap(
    (row) => lineOf(row) ?? [],
  );
}

/** A curve with everything above a temperature brought down to it. */
function cappedAt(points: readonly CurvePoint[], topC: number): CurvePoint[] {
  const out: CurvePoint[] = [];
  for (const [index, here] of points.entries()) {
    const before = points[index - 1];
    if (before && (before.tempC - topC) * (here.tempC - topC) < 0) {
      const share = (topC - before.tempC) / (here.tempC - before.tempC);
      out.push({ timeMin: before.timeMin + share * (here.timeMin - before.timeMin), tempC: topC });
    }
    out.push({ timeMin: here.timeMin, tempC: Math.min(here.tempC, topC) });
  }
  return out;
}

/**
 * log10 reduction of one organism over curves, come-up and carry-over counted where they are in them. Nothing below the
 * coldest temperature it was measured at, and no more above the hottest than at it: a line is not drawn beyond its points.
 */
export function logReductionOver(
  { line, dRefMin, measuredC: [lowC, topC] }: OrganismLine,
  curves: readonly (readonly CurvePoint[])[],
): number {
  const valueMin = curves.reduce(
    (sum, curve) => sum + pasteurisationValue(cappedAt(curve, topC), line, { floorC: lowC }),
    0,
  );
  return valueMin / dRefMin;
}

const KNOWN_MEATS: readonly MeatKind[] = ['beef', 'pork', 'turkey'];

/** Meats of a formula by its ingredients. A line nobody named is not guessed at. */
export function meatKinds(ingredientIds: readonly (string | null)[], table: CompositionTable): MeatKind[] {
  const kinds = ingredientIds.flatMap((id): MeatKind[] => {
    const row = id === null ? undefined : table.get(id);
    if (!row || (row.category !== 'meat' && row.category !== 'offal')) return [];
    if (isLiver(row)) return [row.species === 'chicken' ? 'chicken-liver' : 'other'];
    return [KNOWN_MEATS.find((kind) => kind === row.species) ?? 'other'];
  });
  return [...new Set(kinds)];
}

/** Curves of one log, the probe's error taken off: to the end of heating, and all of it. */
function surelyCurves({ readings, log, heatEndMs }: CookLogResult) {
  const held = holdReadings(readings).map((reading) => ({
    ...reading,
    tempC: reading.tempC === null ? null : reading.tempC - (log.errorC ?? 0),
  }));
  return {
    whole: curvesOf(held),
    heat: curvesOf(held.filter(({ atMs }) => heatEndMs === null || atMs <= heatEndMs)),
  };
}

/**
 * log10 reductions of the published organisms that fit the product, the probe's error taken off, come-up and carry-over
 * told apart. Information: no rule set here judges by a sum, and a hold counts neither come-up nor what was not logged.
 */
export function reductionsOf(
  result: CookLogResult,
  meats: readonly MeatKind[],
  minced: boolean,
): Reduction[] {
  const { whole, heat } = surelyCurves(result);
  return organismLines(meats, minced).map((organism) => ({
    ...organism,
    atHeatEnd: logReductionOver(organism, heat),
    whole: logReductionOver(organism, whole),
  }));
}

/** A pasteurisation value with its reference, and what published practice asks of it. */
export interface ValueRow {
  readonly id: 'uk-70' | 'fr-70' | 'uk-90' | 'us-90';
  readonly line: LethalityLine;
  readonly atHeatEndMin: number;
  readonly wholeMin: number;
  /** Minutes at the reference that the practice named by the id asks for. */
  readonly askedMin: number;
}

/** Lines with what they are asked for: `fsa-cooking`, DGAL note N2003-8020, `cfa-2006`, `fda-fish-a4`. */
const VALUES: readonly Pick<ValueRow, 'id' | 'line' | 'askedMin'>[] = [
  { id: 'uk-70', line: LINE_70_Z7_5, askedMin: 2 },
  { id: 'fr-70', line: LINE_70_Z10, askedMin: 40 },
  { id: 'uk-90', line: LINE_90_UK, askedMin: 10 },
  { id: 'us-90', line: LINE_90_US, askedMin: 10 },
];

/** Pasteurisation values of one log, the probe's error taken off. Never to be read without reference and z. */
export function valuesOf(result: CookLogResult): ValueRow[] {
  const { whole, heat } = surelyCurves(result);
  const sum = (curves: readonly (readonly CurvePoint[])[], line: LethalityLine) =>
    curves.reduce((total, curve) => total + pasteurisationValue(curve, line), 0);
  return VALUES.map((row) => ({
    ...row,
    atHeatEndMin: sum(heat, row.line),
    wholeMin: sum(whole, row.line),
  }));
}

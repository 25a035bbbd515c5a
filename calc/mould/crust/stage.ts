import type { Finding, MissingInput, Params, Severity, StageResult } from '../../findings/index.ts';
import { entryValue } from '../../quantities/index.ts';
import { crustCavity } from '../crust-cavity.ts';
import { mouldGeometry } from '../mould-geometry.ts';
import { readMould } from '../read-mould.ts';
import type { Measures } from '../shapes/geometry.ts';
import { MOULD_SIZES } from '../sizes.ts';
import type { MouldItem, MouldSlice } from '../slice.ts';
import { type Chimneys, chimneysFor } from './chimneys.ts';
import { type Lining, liningOf } from './lining-of.ts';
import { PASTES, type PasteWeights, pasteWeights } from './paste.ts';
import { ovalPastry, type PastryMass, type PastrySheets, pastryG, straightPastry } from './pastry-sheets.ts';
import type { CrustSlice } from './slice.ts';

export type CrustFindingId =
  | 'crust.shape'
  | 'crust.too-thin'
  | 'crust.too-thick'
  | 'crust.overlap'
  | 'crust.no-cavity'
  | 'crust.salt-outside'
  | 'crust.inside-measures'
  | 'crust.slices-too-narrow'
  | 'crust.lining-salt';

export interface CrustValues {
  readonly mouldId: string | null;
  readonly count: number | null;
  /** For one mould. */
  readonly sheets: PastrySheets | null;
  readonly pastry: PastryMass | null;
  readonly chimneys: Chimneys | null;
  /** Room inside one crust, and inside all. */
  readonly cavityMl: number | null;
  readonly cavityTotalMl: number | null;
  /** All moulds. */
  readonly pastryTotalG: number | null;
  readonly paste: PasteWeights | null;
  /** Salt of all the pastry, g. It is not in the filling's salt. */
  readonly saltG: number | null;
  /** Slices and caul for one mould; null without a mould. */
  readonly lining: Lining | null;
}

/** Crusts thinner than this leak, thicker ones stay raw inside, mm. Common practice, no source. */
const THICKNESS_MM = { min: 3, max: 6 } as const;
const OVERLAP_MM = { min: 15, max: 20 } as const;
const NOISE = 1e-9;

/** Pastry of a pie: sheets to cut, their mass, chimneys, and the room inside. Quality only. */
export function crustStage(
  slice: CrustSlice,
  moulds: MouldSlice,
  context: { readonly hasLiningLine?: boolean } = {},
): StageResult<CrustValues, CrustFindingId> {
  const mould = mouldOf(slice, moulds);
  const values = valuesOf(slice, mould);
  return {
    values,
    findings: crustFindings(slice, mould, values, context.hasLiningLine ?? false),
    verdicts: [],
    missing: crustMissing(slice, mould, values),
  };
}

function mouldOf({ mouldId }: CrustSlice, { moulds }: MouldSlice): MouldItem | null {
  if (mouldId !== null) return moulds.find(({ id }) => id === mouldId) ?? null;
  return moulds.length === 1 ? (moulds[0] ?? null) : null;
}

/** Measures of the shapes a crust is built in; null for the others. */
function crustShape(mould: MouldItem): { readonly measures: Measures; readonly straight: boolean } | null {
  const mm = (name: keyof MouldItem['dimensions']) => entryValue('length', mould.dimensions[name]);
  const measures = (length: number | null, width: number | null, depth: number | null) =>
    length === null || width === null || depth === null ? null : { length, width, depth };
  switch (mould.shape) {
    case 'rectangular':
    case 'tapered': {
      // A taper wants no more than its rim does.
      const found = measures(mm('length'), mm('width'), mm('depth'));
      return found && { measures: found, straight: true };
    }
    case 'oval': {
      const found = measures(mm('length'), mm('width'), mm('depth'));
      return found && { measures: found, straight: false };
    }
    case 'cylinder': {
      const found = measures(mm('diameter'), mm('diameter'), mm('depth'));
      return found && { measures: found, straight: false };
    }
    default:
      return null;
  }
}

function valuesOf(slice: CrustSlice, mould: MouldItem | null): CrustValues {
  const shape = mould === null ? null : crustShape(mould);
  const { length = 0, width = 0, depth = 0 } = shape?.measures ?? {};
  const overlapMm = entryValue('length', slice.overlap);
  const cut = shape?.straight ? straightPastry : ovalPastry;
  const sheets = shape === null || overlapMm === null ? null : cut(length, width, depth, overlapMm);
  const numbers = [
    entryValue('length', slice.thickness),
    entryValue('length', slice.lidThickness),
    entryValue('density', slice.density),
    entryValue('fraction', slice.spare),
  ];
  const [thicknessMm = null, lidMm = null, density = null, spare = null] = numbers;
  const pastry =
    sheets === null || thicknessMm === null || lidMm === null || density === null || spare === null
      ? null
      : pastryG(sheets, thicknessMm, lidMm, density, spare);
  const count = mould === null ? null : readMould(mould).count;
  const cavityMl = mould === null || thicknessMm === null ? null : cavityOf(mould, thicknessMm);
  const pastryTotalG = pastry === null || count === null ? null : pastry.withSpareG * count;
  const paste =
    pastryTotalG === null || slice.pasteId === null ? null : pasteWeights(slice.pasteId, pastryTotalG);
  const own = entryValue('fraction', slice.salt);
  return {
    mouldId: mould?.id ?? null,
    count,
    sheets,
    pastry,
    chimneys: shape === null ? null : chimneysFor(length),
    cavityMl,
    cavityTotalMl: cavityMl === null || count === null ? null : cavityMl * count,
    pastryTotalG,
    paste,
    saltG: paste ? paste.salt : pastryTotalG === null || own === null ? null : pastryTotalG * own,
    lining: mould === null ? null : liningOf(slice, mould),
  };
}

/** A usual pie mould, whose measures are told inside its crust: a sheet cut by them is too small. */
function hasInsideMeasures({ shape, dimensions }: MouldItem): boolean {
  return MOULD_SIZES.some(({ crustMm, measures, ...size }) => {
    if (crustMm === undefined || size.shape !== shape) return false;
    const inside = Object.entries(crustCavity(measures, crustMm));
    return inside.every(
      ([name, mm]) => entryValue('length', dimensions[name as keyof MouldItem['dimensions']]) === mm,
    );
  });
}

/** Room a crust leaves, mL: walls, base and lid taken off. A water measure is of the bare mould and is not used. */
function cavityOf(mould: MouldItem, thicknessMm: number): number | null {
  const entries = Object.entries(mould.dimensions).flatMap(([name, entry]) => {
    const mm = entryValue('length', entry);
    return mm === null ? [] : [[name, mm] as const];
  });
  const inside = mouldGeometry(mould.shape, crustCavity(Object.fromEntries(entries), thicknessMm));
  return inside === null ? null : inside.volumeToMm3(inside.depthMm) / 1000;
}

function crustFindings(
  slice: CrustSlice,
  mould: MouldItem | null,
  values: CrustValues,
  hasLiningLine: boolean,
): Finding<CrustFindingId>[] {
  const found: Finding<CrustFindingId>[] = [];
  const tell = (id: CrustFindingId, severity: Severity, field: string, params: Params = {}) =>
    found.push({ id, severity, stage: 'mould', field: `crust.${field}`, params });
  if (mould && ['roof', 'half-cylinder'].includes(mould.shape))
    tell('crust.shape', 'note', 'mouldId', { shape: mould.shape });
  for (const field of ['thickness', 'lidThickness'] as const) {
    const mm = entryValue('length', slice[field]);
    if (mm === null) continue;
    if (mm < THICKNESS_MM.min - NOISE)
      tell('crust.too-thin', 'caution', field, { mm, leastMm: THICKNESS_MM.min });
    if (mm > THICKNESS_MM.max + NOISE)
      tell('crust.too-thick', 'caution', field, { mm, mostMm: THICKNESS_MM.max });
  }
  const overlapMm = entryValue('length', slice.overlap);
  if (overlapMm !== null && (overlapMm < OVERLAP_MM.min - NOISE || overlapMm > OVERLAP_MM.max + NOISE))
    tell('crust.overlap', 'note', 'overlap', { mm: overlapMm, minMm: OVERLAP_MM.min, maxMm: OVERLAP_MM.max });
  if (values.sheets !== null && values.cavityMl === null && entryValue('length', slice.thickness) !== null)
    tell('crust.no-cavity', 'caution', 'thickness');
  if (mould && hasInsideMeasures(mould)) tell('crust.inside-measures', 'caution', 'mouldId');
  const pieceMm = entryValue('length', slice.pieceWidth);
  const pieceOverlapMm = entryValue('length', slice.pieceOverlap);
  if (pieceMm !== null && pieceOverlapMm !== null && pieceOverlapMm >= pieceMm)
    tell('crust.slices-too-narrow', 'caution', 'pieceOverlap', { mm: pieceMm, overlapMm: pieceOverlapMm });
  const liningSaltG = values.lining?.sliced?.saltG ?? null;
  if (liningSaltG !== null && liningSaltG > 0)
    tell('crust.lining-salt', 'note', 'pieceSalt', {
      saltG: liningSaltG,
      counted: hasLiningLine ? 'yes' : 'no',
    });
  if (values.saltG !== null && values.saltG > 0)
    tell('crust.salt-outside', 'note', slice.pasteId === null ? 'salt' : 'pasteId', { saltG: values.saltG });
  return found;
}

function crustMissing(slice: CrustSlice, mould: MouldItem | null, values: CrustValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string) => {
    if (known === null) missing.push({ field, neededFor: 'crust.pastry' });
  };
  need(mould, 'crust.mouldId');
  if (mould !== null && !['roof', 'half-cylinder'].includes(mould.shape))
    need(values.sheets, `mould.moulds.${mould.id}.dimensions`);
  need(entryValue('length', slice.thickness) || null, 'crust.thickness');
  need(entryValue('length', slice.lidThickness) || null, 'crust.lidThickness');
  need(entryValue('length', slice.overlap), 'crust.overlap');
  need(entryValue('density', slice.density) || null, 'crust.density');
  need(entryValue('fraction', slice.spare), 'crust.spare');
  if (!PASTES.some(({ id }) => id === slice.pasteId)) need(entryValue('fraction', slice.salt), 'crust.salt');
  return missing;
}

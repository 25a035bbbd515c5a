import type { Finding, MissingInput, Params, Severity, StageResult } from '../findings/index.ts';
import { COMPONENTS } from '../formula/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import { compensatedSum } from '../quantities/index.ts';
import type { BlendFindingId } from './finding-ids.ts';
import { fractionsOf, leastCostMissing } from './least-cost/least-cost.ts';
import { type Makeup, makeupOf } from './makeup.ts';
import { type ReadBlend, type ReadMaterial, readBlend } from './read-blend.ts';
import type { BlendSlice } from './slice.ts';
import { type Square, squareBlend } from './square.ts';
import { judgeStandard } from './standard.ts';

/** Fat to protein above which an emulsion is hard to hold. Common practice, no source. */
const MOST_FAT_TO_PROTEIN = 2.2;
const EMULSION_FAMILIES: readonly string[] = ['emulsified-sausage', 'white-pudding'];
/** Slack for the noise of adding percentages. */
const NOISE = 1e-9;

/** A material as the sheet lists it. */
export interface BlendLine {
  readonly materialId: string;
  readonly name: string;
  readonly fatFraction: number | null;
  readonly proteinFraction: number | null;
  readonly waterFraction: number | null;
  readonly saltFraction: number | null;
  readonly perKg: number | null;
}

export interface BlendValues {
  readonly lines: readonly BlendLine[];
  readonly totalG: number | null;
  /** Null while something the square needs is unknown. */
  readonly square: Square | null;
  /** Masses of the square blend: the two free materials, then the locked ones. */
  readonly squareMasses: readonly { readonly materialId: string; readonly massG: number }[];
  readonly squareMakeup: Makeup | null;
  /** Money, null while a price is unknown. */
  readonly squareCost: number | null;
  /** Whether the least-cost blend has all it needs; it is solved apart, by `leastCostBlend`. */
  readonly leastCostReady: boolean;
}

/**
 * The square of two free materials, and whether a least-cost blend could be asked for. Nothing here is a safety
 * verdict.
 */
export function blendStage(
  slice: BlendSlice,
  context: { readonly composition: CompositionTable; readonly familyId: string | null },
): StageResult<BlendValues, BlendFindingId> {
  const read = readBlend(slice, context.composition);
  const a = read.materials.find(({ id }) => id === slice.freeA);
  const b = read.materials.find(({ id }) => id === slice.freeB);
  const locked = read.materials.filter((line) => line.lockedG !== null && line !== a && line !== b);
  const square = a && b && a !== b ? squareOf(read, a, b, locked) : null;
  const masses = square?.ok && a && b ? squareMasses(square, a, b, locked) : [];
  const values: BlendValues = {
    lines: read.materials.map(({ id, name, composition, perKg }) => ({
      materialId: id,
      name,
      fatFraction: composition.fat.fraction,
      proteinFraction: composition.protein.fraction,
      waterFraction: composition.water.fraction,
      saltFraction: composition.salt.fraction,
      perKg,
    })),
    totalG: read.totalG,
    square,
    squareMasses: masses.map(({ material, massG }) => ({ materialId: material.id, massG })),
    squareMakeup:
      masses.length > 0
        ? makeupOf(
            masses.map(({ material, massG }) => ({
              fractions: fractionsOf(material),
              share: massG / (read.totalG ?? 1),
            })),
          )
        : null,
    squareCost: costOf(masses),
    leastCostReady: read.materials.length > 0 && leastCostMissing(read).length === 0,
  };
  return {
    values,
    findings: blendFindings(slice, read, values, masses, context.familyId),
    verdicts: judgeStandard(slice, values.squareMakeup),
    missing: squareMissing(slice, read, a, b, locked),
  };
}

interface MaterialMass {
  readonly material: ReadMaterial;
  readonly massG: number;
}

function squareOf(
  read: ReadBlend,
  a: ReadMaterial,
  b: ReadMaterial,
  locked: readonly ReadMaterial[],
): Square | null {
  const { totalG, fatTargetFraction } = read;
  const fatA = a.composition.fat.fraction;
  const fatB = b.composition.fat.fraction;
  const lockedLines = locked.flatMap(({ lockedG, composition }) => {
    const { fraction } = composition.fat;
    return lockedG === null || fraction === null ? [] : [{ massG: lockedG, fatFraction: fraction }];
  });
  const known = totalG !== null && fatTargetFraction !== null && fatA !== null && fatB !== null;
  if (!known || lockedLines.length < locked.length || read.unreadable.some(isLockedField)) return null;
  return squareBlend({
    totalG,
    targetFatFraction: fatTargetFraction,
    fatAFraction: fatA,
    fatBFraction: fatB,
    locked: lockedLines,
  });
}

function isLockedField({ field }: MissingInput): boolean {
  return field.endsWith('.locked');
}

function squareMasses(
  square: Extract<Square, { ok: true }>,
  a: ReadMaterial,
  b: ReadMaterial,
  locked: readonly ReadMaterial[],
): MaterialMass[] {
  return [
    { material: a, massG: square.massAG },
    { material: b, massG: square.massBG },
    ...locked.map((material) => ({ material, massG: material.lockedG ?? 0 })),
  ];
}

function costOf(masses: readonly MaterialMass[]): number | null {
  const costs = masses.map(({ material, massG }) =>
    material.perKg === null ? null : (massG / 1000) * material.perKg,
  );
  const known = costs.filter((cost) => cost !== null);
  return known.length === costs.length && costs.length > 0 ? compensatedSum(known) : null;
}

function squareMissing(
  slice: BlendSlice,
  read: ReadBlend,
  a: ReadMaterial | undefined,
  b: ReadMaterial | undefined,
  locked: readonly ReadMaterial[],
): MissingInput[] {
  if (read.materials.length === 0) return [];
  const neededFor = 'blend.square';
  const missing: MissingInput[] = read.unreadable
    .filter(isLockedField)
    .map(({ field }) => ({ field, neededFor }));
  if (read.totalG === null) missing.push({ field: 'blend.total', neededFor });
  if (read.fatTargetFraction === null) missing.push({ field: 'blend.fatTarget', neededFor });
  if (!a) missing.push({ field: 'blend.freeA', neededFor });
  if (!b || slice.freeA === slice.freeB) missing.push({ field: 'blend.freeB', neededFor });
  for (const material of [a, b, ...locked]) {
    if (material && material.composition.fat.fraction === null)
      missing.push({ field: `blend.materials.${material.id}.declared.fat`, neededFor });
  }
  return missing;
}

function blendFindings(
  slice: BlendSlice,
  read: ReadBlend,
  { square, squareMakeup }: BlendValues,
  masses: readonly MaterialMass[],
  familyId: string | null,
): Finding<BlendFindingId>[] {
  const found: Finding<BlendFindingId>[] = [];
  const tell = (id: BlendFindingId, severity: Severity, field: string, params: Params = {}) =>
    found.push({ id, severity, stage: 'blend', field: `blend.${field}`, params });

  if (square && !square.ok && square.problem !== 'unusable') {
    const id = `blend.${square.problem}` as const;
    tell(id, 'caution', square.problem === 'locked-fill-it' ? 'total' : 'fatTarget', {
      targetFraction: read.fatTargetFraction ?? 0,
      leastFraction: square.reach?.least ?? 0,
      mostFraction: square.reach?.most ?? 0,
    });
  }
  for (const { material, massG } of masses) {
    if (material.stockG !== null && massG > material.stockG * (1 + NOISE))
      tell('blend.over-stock', 'caution', `materials.${material.id}.stock`, {
        name: material.name,
        massG,
        stockG: material.stockG,
      });
  }
  for (const { id, name, composition } of read.materials) {
    const declared = COMPONENTS.map((component) => composition[component]).filter(
      ({ from }) => from === 'declared',
    );
    const sum = compensatedSum(declared.map(({ fraction }) => fraction ?? 0));
    if (sum > 1 + NOISE)
      tell('blend.declared-over-100', 'caution', `materials.${id}.declared`, { name, sumFraction: sum });
    const isLean = slice.materials.some((material) => material.id === id && material.part === 'lean');
    if (isLean && composition.fat.fraction === 0)
      tell('blend.lean-has-fat', 'note', `materials.${id}.declared.fat`, { name });
  }
  for (const { quality, min, max } of read.bands) {
    if (min !== null && max !== null && min > max)
      tell('blend.band-reversed', 'caution', `bands.${quality}.min`, { quality, min, max });
  }
  const ratio = squareMakeup?.fatToProtein ?? null;
  if (ratio !== null && ratio > MOST_FAT_TO_PROTEIN && EMULSION_FAMILIES.includes(familyId ?? ''))
    tell('blend.fat-to-protein', 'note', 'fatTarget', { ratio, mostRatio: MOST_FAT_TO_PROTEIN });
  return found;
}

import type { MissingInput } from '../../findings/index.ts';
import { COMPONENTS } from '../../formula/index.ts';
import type { CompositionTable } from '../../ingredients/index.ts';
import type { BoundQuality, ReadBand } from '../band.ts';
import type { MaterialFractions } from '../makeup.ts';
import { type ReadBlend, type ReadMaterial, readBlend } from '../read-blend.ts';
import type { BlendSlice } from '../slice.ts';
import { lockedShare } from './bounds.ts';
import { type Blend, cheapestWithin } from './optimum.ts';
import type { BlendProblem } from './problem.ts';
import { type Relaxed, relaxedBlend } from './relax.ts';
import { loadSolver } from './solver.ts';
import { type BoundWorth, boundWorths } from './worth.ts';

export type LeastCost =
  | { readonly state: 'optimal'; readonly blend: Blend; readonly worths: readonly BoundWorth[] }
  | ({ readonly state: 'infeasible' } & Relaxed)
  /** Something is blank or unreadable; nothing is assumed for it. */
  | { readonly state: 'cannot-tell'; readonly missing: readonly MissingInput[] }
  /** Locked lines fill the whole blend, or no material is free to move. */
  | { readonly state: 'nothing-to-choose' }
  | { readonly state: 'no-answer' };

/** Composition fields a quality rests on. */
const FIELDS: Readonly<Record<BoundQuality, readonly (typeof COMPONENTS)[number][]>> = {
  fat: ['fat'],
  protein: ['protein'],
  salt: ['salt'],
  liver: [],
  'water-to-protein': ['water', 'protein'],
  'added-water': ['water', 'protein'],
  'fat-and-added-water': ['fat', 'water', 'protein'],
  ice: [],
};

/** Water that meat protein is taken to bring with it, parts to one of protein: 9 CFR 318.22(b). */
const WATER_PER_PROTEIN = 4;

/** The fractions of a material. Liver is all or nothing of it. */
export function fractionsOf({ composition, isLiver, isMeat, isWater }: ReadMaterial): MaterialFractions {
  const known = Object.fromEntries(COMPONENTS.map((name) => [name, composition[name].fraction]));
  const { water, protein, fat } = known as Pick<MaterialFractions, 'water' | 'protein' | 'fat'>;
  const added =
    water === null || protein === null ? null : water - WATER_PER_PROTEIN * (isMeat ? protein : 0);
  return {
    ...(known as Pick<MaterialFractions, 'water' | 'protein' | 'fat' | 'salt'>),
    liver: isLiver ? 1 : 0,
    'added-water': added,
    'fat-and-added-water': added === null || fat === null ? null : fat + added,
    ice: isWater ? 1 : 0,
  };
}

function isBound({ min, max }: ReadBand): boolean {
  return min !== null || max !== null;
}

/** Everything a least-cost blend still needs. */
export function leastCostMissing(read: ReadBlend): MissingInput[] {
  const neededFor = 'blend.least-cost';
  const missing: MissingInput[] = [...read.unreadable];
  if (read.totalG === null) missing.push({ field: 'blend.total', neededFor });
  if (read.materials.length === 0) missing.push({ field: 'blend.materials', neededFor });
  const needed = new Set(read.bands.filter(isBound).flatMap(({ quality }) => FIELDS[quality]));
  for (const { id, perKg, composition } of read.materials) {
    if (perKg === null) missing.push({ field: `blend.materials.${id}.price`, neededFor });
    for (const component of needed) {
      if (composition[component].fraction === null)
        missing.push({ field: `blend.materials.${id}.declared.${component}`, neededFor });
    }
  }
  return missing.filter(({ field }, index) => missing.findIndex((other) => other.field === field) === index);
}

/** The problem in numbers, or null while something is missing. */
function toProblem(read: ReadBlend): BlendProblem | null {
  const { totalG } = read;
  if (totalG === null || leastCostMissing(read).length > 0) return null;
  const materials = read.materials.flatMap((material) =>
    material.perKg === null ? [] : [{ ...material, perKg: material.perKg, fractions: fractionsOf(material) }],
  );
  return { totalG, materials, bands: read.bands.filter(isBound) };
}

/**
 * The cheapest blend of the materials on hand within their stocks, shares and the bands asked for. The solver is
 * loaded by this call and not before. Where no blend can be, the answer says which bounds stand in the way and by how
 * much; where one is found, what each binding bound costs.
 */
export async function leastCostBlend(
  slice: BlendSlice,
  context: { readonly composition: CompositionTable },
): Promise<LeastCost> {
  const read = readBlend(slice, context.composition);
  const problem = toProblem(read);
  if (problem === null) return { state: 'cannot-tell', missing: leastCostMissing(read) };
  return solveProblem(problem);
}

/** The same for a problem already in numbers. A blend of no mass has nothing to choose. */
export async function solveProblem(problem: BlendProblem): Promise<LeastCost> {
  const free = problem.materials.some(({ lockedG }) => lockedG === null);
  if (!free || !(problem.totalG > 0) || lockedShare(problem) >= 1) return { state: 'nothing-to-choose' };
  const solve = await loadSolver();
  const best = cheapestWithin(problem, solve);
  if (best.state === 'no-answer') return { state: 'no-answer' };
  if (best.state === 'infeasible') return { state: 'infeasible', ...relaxedBlend(problem, solve) };
  return { state: 'optimal', blend: best.blend, worths: boundWorths(problem, best.blend, solve) };
}

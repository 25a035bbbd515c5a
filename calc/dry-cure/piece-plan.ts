import {
  type CuringSaltDose,
  curingSaltForTarget,
  limitAsSodiumNitrite,
  nearestStepG,
} from '../cure/index.ts';
import type { WholeMuscleLimit } from './rule-sets/index.ts';

/** What an equilibrium cure of one piece is planned from. Masses in g, fractions 0–1; null is unknown. */
export interface PieceQuestion {
  readonly greenG: number;
  readonly saltTargetFraction: number | null;
  readonly sugarFraction: number | null;
  readonly nitriteTargetPpm: number | null;
  readonly nitriteFraction: number | null;
  /** Salt in the curing salt. */
  readonly packSaltFraction: number | null;
  readonly readabilityG: number | null;
  readonly ceilingPpmMeat: number | null;
}

/** What goes into the bag. Whole steps of the scale; null where it cannot be told. */
export interface PiecePlan {
  /** Null: no dose was asked for or something it needs is missing. */
  readonly dose: CuringSaltDose | null;
  readonly curingSaltG: number | null;
  readonly plainSaltG: number | null;
  readonly sugarG: number | null;
  /** The curing salt alone brings more salt than is wanted, by this much, g. */
  readonly saltOverG: number | null;
}

/**
 * Doses of an equilibrium cure: everything in the bag goes in, so each is a share of the meat. The
 * curing salt is rounded to the scale first, down where up would break the ceiling; plain salt makes
 * up the rest from the curing salt as rounded.
 *
 * Derived: mass balance.
 */
export function planPiece(question: PieceQuestion): PiecePlan {
  const { greenG, saltTargetFraction, sugarFraction, readabilityG, packSaltFraction } = question;
  const dose = doseOf(question);
  const curingSaltG = question.nitriteTargetPpm === 0 ? 0 : dose?.ok ? dose.doseG : null;
  const step = (massG: number) => (readabilityG === null ? massG : nearestStepG(massG, readabilityG));
  const sugarG = sugarFraction === null ? null : step(sugarFraction * greenG);
  const carriedG =
    curingSaltG === 0
      ? 0
      : curingSaltG === null || packSaltFraction === null
        ? null
        : curingSaltG * packSaltFraction;
  if (saltTargetFraction === null || carriedG === null) {
    return { dose, curingSaltG, plainSaltG: null, sugarG, saltOverG: null };
  }
  const plainG = saltTargetFraction * greenG - carriedG;
  // Half a step over is rounding, not a weak pack.
  if (plainG < -(readabilityG ?? 0) / 2) {
    return { dose, curingSaltG, plainSaltG: null, sugarG, saltOverG: -plainG };
  }
  return { dose, curingSaltG, plainSaltG: Math.max(0, step(plainG)), sugarG, saltOverG: null };
}

function doseOf(question: PieceQuestion): CuringSaltDose | null {
  const { nitriteTargetPpm, nitriteFraction, readabilityG, greenG, ceilingPpmMeat } = question;
  if (nitriteTargetPpm === null || nitriteTargetPpm === 0) return null;
  if (nitriteFraction === null || readabilityG === null) return null;
  return curingSaltForTarget({
    targetPpm: nitriteTargetPpm,
    basisMassG: greenG,
    countsInBasis: false,
    nitriteFraction,
    readabilityG,
    ceilingPpm: ceilingPpmMeat,
  });
}

/**
 * Most nitrite a dose may aim at, mg of sodium nitrite to the kilogram of meat. Where a rule set
 * counts on the product as made, salt and sugar come on top of the meat. Where it limits only what is
 * left, no more is dosed than may be left.
 *
 * @param cureFraction salt and sugar on the meat, 0 where they are not known
 * @returns null when there is no such limit: a dose is then rounded down
 * @example ceilingOnMeat([eu80], 0.025) // 122.98: 80 as ion is 119.98, on 1.025 kg
 */
export function ceilingOnMeat(limits: readonly WholeMuscleLimit[], cureFraction: number): number | null {
  const ceilings = limits.filter((limit) => limit.substance === 'nitrite' && limit.role === 'ceiling');
  const ingoing = ceilings.filter((limit) => limit.kind === 'ingoing');
  const binding = ingoing.length > 0 ? ingoing : ceilings;
  if (binding.length === 0) return null;
  return Math.min(
    ...binding.map((limit) => {
      const onBasis = limitAsSodiumNitrite(limit.expressedAs, limit.valuePpm);
      return limit.basis === 'total' ? onBasis * (1 + cureFraction) : onBasis;
    }),
  );
}

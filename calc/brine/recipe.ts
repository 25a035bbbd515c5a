import { type CuringSaltDose, curingSaltForTarget, nearestStepG } from '../cure/index.ts';
import { equilibriumSalt } from './equilibrium-salt.ts';
import type { SaltBase } from './slice.ts';

/** What a brine is planned from. Masses in g, fractions 0–1; null is unknown. */
export interface BrineQuestion {
  readonly greenG: number;
  readonly meatWaterFraction: number | null;
  readonly waterG: number;
  readonly saltTargetFraction: number | null;
  readonly saltBase: SaltBase;
  readonly sugarFraction: number | null;
  readonly nitriteTargetPpm: number | null;
  readonly nitriteFraction: number | null;
  readonly packSaltFraction: number | null;
  readonly acceleratorPpm: number | null;
  readonly phosphateFraction: number | null;
  readonly readabilityG: number | null;
  /** Highest nitrite a dose may aim at; null: none is carried, and none is dosed. */
  readonly ceilingPpm: number | null;
}

/** A brine to weigh, whole steps of the scale; null where it cannot be told. */
export interface BrineRecipe {
  readonly dose: CuringSaltDose | null;
  readonly waterG: number;
  readonly curingSaltG: number | null;
  readonly plainSaltG: number | null;
  readonly sugarG: number | null;
  readonly acceleratorG: number | null;
  readonly phosphateG: number | null;
  /** Why there is no plain salt to weigh. */
  readonly refusal: 'cure-brings-too-much-salt' | 'cannot-dissolve' | null;
}

/** Salt a brine holds at most, on salt and water. */
const SATURATED = 0.26395;

/**
 * Recipe of a soak: every dose is a share of meat and water, phosphate of the meat alone.
 */
export function immersionRecipe(question: BrineQuestion): BrineRecipe {
  const { greenG, waterG, meatWaterFraction, saltTargetFraction } = question;
  const baseG = greenG + waterG;
  const saltG =
    saltTargetFraction === null || (meatWaterFraction === null && question.saltBase !== 'meat-and-water')
      ? null
      : equilibriumSalt(
          { meat: greenG, meatWaterFraction: meatWaterFraction ?? 1, water: waterG },
          saltTargetFraction,
          question.saltBase,
        );
  return weigh(question, { saltG, baseG, nitriteBaseG: baseG, phosphateBaseG: greenG });
}

/**
 * Recipe of a pickle of which the meat takes up a known share: an injection, or a timed brine whose
 * pick-up has been weighed before. Levels in the meat divided by that share are levels in the pickle.
 *
 * @param uptakeFraction pickle taken up ÷ meat: all that is injected counts for nitrite
 * @param saltFraction salt of the pickle, fraction of all of it
 */
export function pickleRecipe(
  question: BrineQuestion,
  uptakeFraction: number | null,
  saltFraction: number | null,
): BrineRecipe {
  const { waterG } = question;
  const share = (onMeat: number | null) => {
    if (onMeat === null) return 0;
    return uptakeFraction === null || uptakeFraction <= 0 ? 0 : onMeat / uptakeFraction;
  };
  const ppm = (value: number | null) => (value === null ? null : value / 1e6);
  const cureShare =
    question.nitriteFraction === null ? 0 : share(ppm(question.nitriteTargetPpm)) / question.nitriteFraction;
  const others =
    share(question.sugarFraction) + share(ppm(question.acceleratorPpm)) + share(question.phosphateFraction);
  // Salt within the curing salt is part of the salt; what else it holds is a trace.
  const waterShare = 1 - Math.max(saltFraction ?? 0, cureShare) - others;
  const pickleG = waterShare > 0 ? waterG / waterShare : null;
  if (pickleG === null || uptakeFraction === null || uptakeFraction <= 0) {
    const saltG = pickleG === null || saltFraction === null ? null : saltFraction * pickleG;
    return weigh(
      { ...question, nitriteTargetPpm: question.nitriteTargetPpm === 0 ? 0 : null },
      { saltG, baseG: null, nitriteBaseG: null, phosphateBaseG: null },
    );
  }
  const meatG = pickleG / uptakeFraction;
  const saltG = saltFraction === null ? null : saltFraction * pickleG;
  return weigh(question, { saltG, baseG: meatG, nitriteBaseG: meatG, phosphateBaseG: meatG });
}

/**
 * Salt an injected pickle must hold, fraction of it, so that the pumped meat holds the target:
 * s·(1 + p·r) ÷ (p·r). Derived: mass balance.
 *
 * @param retainedFraction share of the injection that stays in
 * @example pickleSalt(0.022, 0.1, 0.9) // 0.266, more than water dissolves
 */
export function pickleSalt(
  saltTargetFraction: number,
  pumpFraction: number,
  retainedFraction: number,
): number | null {
  const stays = pumpFraction * retainedFraction;
  if (!(stays > 0) || !(saltTargetFraction >= 0)) return null;
  const salt = (saltTargetFraction * (1 + stays)) / stays;
  return Number.isFinite(salt) ? salt : null;
}

interface Bases {
  /** Salt from all sources. */
  readonly saltG: number | null;
  readonly baseG: number | null;
  readonly nitriteBaseG: number | null;
  readonly phosphateBaseG: number | null;
}

function weigh(question: BrineQuestion, bases: Bases): BrineRecipe {
  const { readabilityG, packSaltFraction, waterG } = question;
  const step = (massG: number) => (readabilityG === null ? massG : nearestStepG(massG, readabilityG));
  const of = (fraction: number | null, baseG: number | null) =>
    fraction === null || (baseG === null && fraction !== 0) ? null : step(fraction * (baseG ?? 0));
  const dose = doseOf(question, bases.nitriteBaseG);
  const curingSaltG = question.nitriteTargetPpm === 0 ? 0 : dose?.ok ? dose.doseG : null;
  const rest = {
    dose,
    waterG,
    curingSaltG,
    sugarG: of(question.sugarFraction, bases.baseG),
    acceleratorG: of(question.acceleratorPpm === null ? null : question.acceleratorPpm / 1e6, bases.baseG),
    phosphateG: of(question.phosphateFraction, bases.phosphateBaseG),
  };
  const { saltG } = bases;
  if (saltG !== null && saltG / (saltG + waterG) > SATURATED) {
    return { ...rest, plainSaltG: null, refusal: 'cannot-dissolve' };
  }
  const carriedG =
    curingSaltG === 0
      ? 0
      : curingSaltG === null || packSaltFraction === null
        ? null
        : curingSaltG * packSaltFraction;
  if (saltG === null || carriedG === null) return { ...rest, plainSaltG: null, refusal: null };
  const plainG = saltG - carriedG;
  if (plainG < -(readabilityG ?? 0) / 2) {
    return { ...rest, plainSaltG: null, refusal: 'cure-brings-too-much-salt' };
  }
  return { ...rest, plainSaltG: Math.max(0, step(plainG)), refusal: null };
}

function doseOf(question: BrineQuestion, basisMassG: number | null): CuringSaltDose | null {
  const { nitriteTargetPpm, nitriteFraction, readabilityG, ceilingPpm } = question;
  if (nitriteTargetPpm === null || nitriteTargetPpm === 0 || basisMassG === null) return null;
  if (nitriteFraction === null || readabilityG === null || ceilingPpm === null) return null;
  return curingSaltForTarget({
    targetPpm: nitriteTargetPpm,
    basisMassG,
    countsInBasis: false,
    nitriteFraction,
    readabilityG,
    ceilingPpm,
  });
}

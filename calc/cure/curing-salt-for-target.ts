import { nitritePpm } from './nitrite-ppm.ts';
import { isWeighable, MIN_SCALE_STEPS, nearestStepG, stepBelowG, weighingErrorFraction } from './weighing.ts';

/** What a dose of curing salt is worked out from. Masses in g, concentrations mg/kg as sodium nitrite. */
export interface CuringSaltTarget {
  /** Wanted ingoing nitrite on the weight basis. */
  readonly targetPpm: number;
  /** Weight basis without the curing salt itself. */
  readonly basisMassG: number;
  /** Whether the curing salt is part of the weight basis: yes on everything in the bowl, no on the meat block. */
  readonly countsInBasis: boolean;
  /** Sodium nitrite in the curing salt, by the pack, as a fraction. */
  readonly nitriteFraction: number;
  /** Smallest step of the scale, g. */
  readonly readabilityG: number;
  /** Highest nitrite the rule set lets in; null when it names none, and the dose is then rounded down. */
  readonly ceilingPpm: number | null;
  /** Nitrite from other sources on the same basis, g. It counts against the ceiling, not toward the target. */
  readonly otherNitriteG?: number;
}

export type CuringSaltRefusal =
  | 'unusable-input'
  | 'target-over-ceiling'
  | 'other-sources-over-ceiling'
  | 'strength-below-target'
  | 'too-small-to-weigh';

export type CuringSaltDose =
  | {
      readonly ok: true;
      /** Before rounding, g. */
      readonly exactG: number;
      /** To put on the scale, g: whole steps of it. */
      readonly doseG: number;
      /** What `doseG` gives by itself, mg/kg on the basis. */
      readonly ppm: number;
      /** What all sources give with `doseG`, mg/kg on the basis. */
      readonly allSourcesPpm: number;
      /** Rounding of the scale, ± fraction of `doseG`. */
      readonly weighingErrorFraction: number;
    }
  | {
      readonly ok: false;
      readonly reason: CuringSaltRefusal;
      /** For `too-small-to-weigh`: the dose before rounding and the least this scale can weigh, g. */
      readonly exactG: number | null;
      readonly leastG: number | null;
    };

/**
 * Curing salt to weigh for a wanted ingoing nitrite: target × basis ÷ strength, rounded to the step
 * of the scale, down where up would break the ceiling. Refused when the scale is too coarse
 * (fewer than 50 steps) or the ceiling would be broken. Grams only; nitrate is never dosed.
 *
 * Source: FSIS Directive 7620.3 (rev. 1995), comminuted products, solved for the weight of the mix.
 *
 * @example
 * curingSaltForTarget({ targetPpm: 120, basisMassG: 2800, countsInBasis: false, nitriteFraction: 0.0625,
 *   readabilityG: 0.1, ceilingPpm: 156.25 }) // exact 5.376 g, to weigh 5.4 g, 120.5 mg/kg
 */
export function curingSaltForTarget(target: CuringSaltTarget): CuringSaltDose {
  const { targetPpm, basisMassG, countsInBasis, nitriteFraction, readabilityG, ceilingPpm } = target;
  const otherNitriteG = target.otherNitriteG ?? 0;
  const positives = [targetPpm, basisMassG, nitriteFraction, readabilityG];
  if (!positives.every((value) => Number.isFinite(value) && value > 0) || nitriteFraction > 1) {
    return refused('unusable-input');
  }
  if (!Number.isFinite(otherNitriteG) || otherNitriteG < 0) return refused('unusable-input');
  if (ceilingPpm !== null && (!Number.isFinite(ceilingPpm) || ceilingPpm < 0))
    return refused('unusable-input');
  if (ceilingPpm !== null && targetPpm > ceilingPpm) return refused('target-over-ceiling');

  const targetFraction = targetPpm / 1e6;
  const netStrength = countsInBasis ? nitriteFraction - targetFraction : nitriteFraction;
  if (netStrength <= 0) return refused('strength-below-target');
  const exactG = (targetFraction * basisMassG) / netStrength;

  const ppmOf = (doseG: number, extraNitriteG: number) =>
    nitritePpm(doseG * nitriteFraction + extraNitriteG, basisMassG + (countsInBasis ? doseG : 0)) ??
    Number.POSITIVE_INFINITY;
  const nearestG = nearestStepG(exactG, readabilityG);
  const fits = ceilingPpm !== null && ppmOf(nearestG, otherNitriteG) <= ceilingPpm;
  const doseG = fits ? nearestG : stepBelowG(exactG, readabilityG);
  if (ceilingPpm !== null && ppmOf(doseG, otherNitriteG) > ceilingPpm) {
    return refused('other-sources-over-ceiling', exactG);
  }
  if (!isWeighable(doseG, readabilityG)) {
    return refused('too-small-to-weigh', exactG, readabilityG * MIN_SCALE_STEPS);
  }
  return {
    ok: true,
    exactG,
    doseG,
    ppm: ppmOf(doseG, 0),
    allSourcesPpm: ppmOf(doseG, otherNitriteG),
    weighingErrorFraction: weighingErrorFraction(doseG, readabilityG) ?? 0,
  };
}

function refused(
  reason: CuringSaltRefusal,
  exactG: number | null = null,
  leastG: number | null = null,
): CuringSaltDose {
  return { ok: false, reason, exactG, leastG };
}

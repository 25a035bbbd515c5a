import { twoTrimBlend } from '../formula/index.ts';
import { compensatedSum } from '../quantities/index.ts';

/** A line that goes in whatever the target. */
export interface LockedLine {
  readonly massG: number;
  readonly fatFraction: number;
}

export interface SquareRequest {
  /** Mass of the blend, locked lines included, g. */
  readonly totalG: number;
  readonly targetFatFraction: number;
  readonly fatAFraction: number;
  readonly fatBFraction: number;
  readonly locked: readonly LockedLine[];
}

export type SquareProblem =
  /** A number is no mass or fraction. */
  | 'unusable'
  /** The locked lines are all of the blend or more. */
  | 'locked-fill-it'
  /** Both free materials are equally fat. */
  | 'same-fat'
  /** No mixture of the two reaches the target beside the locked lines. */
  | 'out-of-reach';

export type Square =
  | {
      readonly ok: true;
      readonly massAG: number;
      readonly massBG: number;
      /** Shares of the free part, 0–1. */
      readonly fractionOfA: number;
      readonly fractionOfB: number;
      /** Fat the free part must have so that the whole meets the target. */
      readonly freeTargetFraction: number;
      readonly freeG: number;
    }
  | {
      readonly ok: false;
      readonly problem: SquareProblem;
      /** Fat the whole can have: all of the leaner free material to all of the fatter one. */
      readonly reach: { readonly least: number; readonly most: number } | null;
    };

/**
 * The square: two free materials to one fat content of the whole, with lines that stay as they are. The locked fat is
 * taken off first (target × total = Σ fat × mass), the rest is the plain square of two. Nothing is extrapolated:
 * outside the two there is no blend.
 * Derived: mass balance. The square itself is common practice.
 * @example 10 kg to 25 % from 3 % and 88 %: 7,412 g and 2,588 g
 */
export function squareBlend(request: SquareRequest): Square {
  const { totalG, targetFatFraction, fatAFraction, fatBFraction, locked } = request;
  const fractions = [
    targetFatFraction,
    fatAFraction,
    fatBFraction,
    ...locked.map((line) => line.fatFraction),
  ];
  const masses = [totalG, ...locked.map(({ massG }) => massG)];
  const usable =
    fractions.every((value) => value >= 0 && value <= 1) &&
    masses.every((value) => value >= 0 && Number.isFinite(value)) &&
    totalG > 0;
  if (!usable) return { ok: false, problem: 'unusable', reach: null };
  const freeG = totalG - compensatedSum(locked.map(({ massG }) => massG));
  if (freeG <= 0) return { ok: false, problem: 'locked-fill-it', reach: null };
  const lockedFatG = compensatedSum(locked.map(({ massG, fatFraction }) => massG * fatFraction));
  const whole = (fatFraction: number) => (lockedFatG + freeG * fatFraction) / totalG;
  const reach = {
    least: whole(Math.min(fatAFraction, fatBFraction)),
    most: whole(Math.max(fatAFraction, fatBFraction)),
  };
  if (fatAFraction === fatBFraction) return { ok: false, problem: 'same-fat', reach };
  const freeTargetFraction = (targetFatFraction * totalG - lockedFatG) / freeG;
  const blend = twoTrimBlend(fatAFraction, fatBFraction, freeTargetFraction);
  if (!blend) return { ok: false, problem: 'out-of-reach', reach };
  const massAG = blend.fractionOfA * freeG;
  return { ok: true, ...blend, massAG, massBG: freeG - massAG, freeTargetFraction, freeG };
}

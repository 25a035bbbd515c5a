import { CURING_TIME_RULES, type CuringTimeRuleId, curingDays } from './curing-times.ts';
import type { CureRoute } from './rule-sets/index.ts';
import { slabFourierAtCentre } from './slab.ts';

/**
 * Salt diffusion in muscle at 2 to 5 °C, m²/s. From memory (source `salt-diffusion-in-pork`); papers
 * for 0 to 10 °C lie between 1 and 4 × 10⁻¹⁰. Nitrite moves far slower, for it reacts on its way.
 */
export const SALT_DIFFUSION_M2_PER_S = { slow: 2e-10, fast: 5e-10 } as const;
/** The middle counts as salted here. */
const CENTRE_LEVEL = 0.9;
const MM2_PER_M2 = 1e6;
const SECONDS_PER_DAY = 86_400;

/** How long a piece may take. Guidance: finished salt and weight decide. */
export interface CureTime {
  readonly rules: readonly {
    readonly ruleId: CuringTimeRuleId;
    readonly days: number;
    /** False where the rule was made for other thicknesses. */
    readonly inRange: boolean;
  }[];
  /** Until the middle of a slab stands at 90 % of its final salt, with fast and with slow diffusion. */
  readonly diffusionDays: { readonly fast: number; readonly slow: number } | null;
  /** The longest of the above, whole days upward: with fast and with slow diffusion. */
  readonly guidanceDays: { readonly low: number; readonly high: number } | null;
}

/**
 * Days for salt to diffuse to the middle of a slab from both faces, to 90 % of the final level.
 *
 * Derived from the slab series. The trade's 0.85·(t/2)²/D brings the mean to 90 %, the middle only to 84 %.
 *
 * @param thicknessMm whole thickness
 * @returns null for an unusable number
 * @example diffusionDays(50, 2e-10) // 37.3
 */
export function diffusionDays(thicknessMm: number, diffusionM2PerS: number): number | null {
  const fourier = slabFourierAtCentre(CENTRE_LEVEL);
  if (fourier === null || !isPositive(thicknessMm) || !isPositive(diffusionM2PerS)) return null;
  return (fourier * (thicknessMm / 2) ** 2) / (diffusionM2PerS * MM2_PER_M2) / SECONDS_PER_DAY;
}

/**
 * Both rules of thumb and the diffusion estimate; the longest is the guidance.
 *
 * @param piece thickness in mm and mass in g, null unknown; `isHam` brings in the rules by weight, made for hams and shoulders
 */
export function cureTime(piece: {
  readonly thicknessMm: number | null;
  readonly massG: number | null;
  readonly route: Exclude<CureRoute, 'pumped'>;
  readonly isHam: boolean;
}): CureTime {
  const { thicknessMm, massG } = piece;
  const rules = CURING_TIME_RULES.filter(
    (rule) => rule.route === piece.route && (piece.isHam || rule.by === 'thickness'),
  ).flatMap((rule) => {
    const size = rule.by === 'mass' ? massG : thicknessMm;
    const days = size === null ? null : curingDays(rule.id, size);
    if (days === null) return [];
    const range = rule.rangeMm;
    const inRange =
      range === null || (thicknessMm !== null && thicknessMm >= range[0] && thicknessMm <= range[1]);
    return [{ ruleId: rule.id, days, inRange }];
  });
  const { fast, slow } = SALT_DIFFUSION_M2_PER_S;
  const fastDays = thicknessMm === null ? null : diffusionDays(thicknessMm, fast);
  const slowDays = thicknessMm === null ? null : diffusionDays(thicknessMm, slow);
  const diffusion = fastDays === null || slowDays === null ? null : { fast: fastDays, slow: slowDays };
  const thumb = Math.max(0, ...rules.map(({ days }) => days));
  const guidanceDays =
    diffusion === null
      ? null
      : { low: wholeDays(thumb, diffusion.fast), high: wholeDays(thumb, diffusion.slow) };
  return { rules, diffusionDays: diffusion, guidanceDays };
}

/** Upward, but not for a hair of float noise. */
function wholeDays(...days: number[]): number {
  return Math.ceil(Math.max(...days) * (1 - 1e-12));
}

function isPositive(value: number): boolean {
  return Number.isFinite(value) && value > 0;
}

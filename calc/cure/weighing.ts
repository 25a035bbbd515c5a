/**
 * Least number of scale steps a dose of curing salt must have: one whole step is then at most 2 % of
 * it. Common practice, no source.
 */
export const MIN_SCALE_STEPS = 50;

/** Float noise allowed when a mass is compared with a whole number of scale steps. */
const STEP_NOISE = 1e-9;

/**
 * How far the weighed amount may be off because the scale shows whole steps: half a step, as a
 * fraction of the amount. Error of the load cell and of the tare come on top.
 *
 * @param massG amount weighed, g, above 0
 * @param readabilityG smallest step the scale shows, g, above 0
 * @returns fraction, or null when either is not a positive number
 * @example weighingErrorFraction(5, 1) // 0.1, that is ± 10 %
 */
export function weighingErrorFraction(massG: number, readabilityG: number): number | null {
  if (!isPositive(massG) || !isPositive(readabilityG)) return null;
  return readabilityG / 2 / massG;
}

/**
 * Whether the amount is large enough for the scale: at least 50 steps of it.
 *
 * @example isWeighable(5, 0.1) // true: exactly 50 steps
 * @example isWeighable(5, 1) // false
 */
export function isWeighable(massG: number, readabilityG: number): boolean {
  if (!isPositive(massG) || !isPositive(readabilityG)) return false;
  return massG / readabilityG >= MIN_SCALE_STEPS * (1 - STEP_NOISE);
}

/**
 * The amount in whole steps of the scale, g, the nearest one.
 *
 * @param readabilityG smallest step the scale shows, g; the amount comes back as it is where that is not above 0
 */
export function nearestStepG(massG: number, readabilityG: number): number {
  if (!isPositive(readabilityG)) return massG;
  return stepsToG(Math.round(massG / readabilityG), readabilityG);
}

/**
 * The amount in whole steps of the scale, g, never more than the amount.
 *
 * @param readabilityG smallest step the scale shows, g; the amount comes back as it is where that is not above 0
 */
export function stepBelowG(massG: number, readabilityG: number): number {
  if (!isPositive(readabilityG)) return massG;
  return stepsToG(Math.floor((massG / readabilityG) * (1 + STEP_NOISE)), readabilityG);
}

/** 54 steps of 0.1 g are 5.4 g and not 5.4000000000000004 g. */
function stepsToG(steps: number, readabilityG: number): number {
  return Number((steps * readabilityG).toPrecision(12));
}

function isPositive(value: number): boolean {
  return Number.isFinite(value) && value > 0;
}

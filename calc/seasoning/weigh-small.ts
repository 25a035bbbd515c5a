/** A weight of spice wants this many steps of the scale: half a step is then a tenth of it. Common practice, no source. */
export const LEAST_SPICE_STEPS = 5;
/** One part of spice in ten of the mixture. */
export const DILUTION = 10;

/** Float noise of dividing a mass into scale steps. */
const NOISE = 1e-9;

/** Whether the scale shows a spice well enough: at least five steps. 0.5 g on a scale of 0.1 g. */
export function spiceWeighable(massG: number, readabilityG: number): boolean {
  if (!(massG > 0) || !(readabilityG > 0) || !Number.isFinite(massG)) return false;
  return massG / readabilityG >= LEAST_SPICE_STEPS * (1 - NOISE);
}

/** One part of spice rubbed into nine of salt, and how much of the mixture goes in. */
export interface SaltDilution {
  /** Mixed ahead, enough of each to weigh. */
  readonly spiceG: number;
  readonly saltG: number;
  /** Of the mixture into the batch. */
  readonly useG: number;
  /** Salt that comes with it. Take it off the plain salt. */
  readonly saltInBatchG: number;
  /** The mixture itself is still too little for the scale. */
  readonly stillTooSmall: boolean;
}

/**
 * A spice too light for the scale, carried by nine parts of salt. Never done with curing salt.
 * Common practice, no source; masses derived.
 *
 * @returns null for what is no mass or no readability
 * @example diluteInSalt(0.2, 0.1) // 0.5 g spice in 4.5 g salt; 2 g of it goes in, with 1.8 g of salt
 */
export function diluteInSalt(massG: number, readabilityG: number): SaltDilution | null {
  if (!(massG > 0) || !(readabilityG > 0) || !Number.isFinite(massG) || !Number.isFinite(readabilityG))
    return null;
  const spiceG = Math.max(massG, LEAST_SPICE_STEPS * readabilityG);
  const useG = massG * DILUTION;
  return {
    spiceG,
    saltG: spiceG * (DILUTION - 1),
    useG,
    saltInBatchG: useG - massG,
    stillTooSmall: !spiceWeighable(useG, readabilityG),
  };
}

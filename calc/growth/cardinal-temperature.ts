/** Temperatures between which an organism grows, and how fast at its best. */
export interface CardinalTemperatures {
  /** 1/h, natural logarithms. Divide by ln 10 for tenfolds an hour. */
  readonly optimumPerH: number;
  /** Constants of a fitted curve. Below the least is not the same as safe. */
  readonly minC: number;
  readonly optC: number;
  readonly maxC: number;
}

/**
 * Growth rate at a temperature, 1/h in natural logarithms: the cardinal temperature model with inflection.
 * Nothing at or beyond the two ends; no dying off is counted above the upper one.
 *
 * Source: Rosso et al. 1993, J. Theor. Biol. 162:447 (equation from memory).
 */
export function cardinalRatePerH(
  tempC: number,
  { optimumPerH, minC, optC, maxC }: CardinalTemperatures,
): number {
  if (!(tempC > minC && tempC < maxC)) return 0;
  const toOpt = optC - minC;
  const shape = toOpt * (toOpt * (tempC - optC) - (optC - maxC) * (optC + minC - 2 * tempC));
  return Math.max(0, (optimumPerH * (tempC - maxC) * (tempC - minC) ** 2) / shape);
}

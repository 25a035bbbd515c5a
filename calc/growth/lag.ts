/**
 * Work that has to be done before growth begins, h0: the lag as a pure number, for under changing temperature the lag
 * ends when the integral of the rate reaches it, not after a fixed time. h0 = ln (1 + 1/Q0) = μ × lag.
 *
 * Source: Baranyi & Roberts 1994, Int. J. Food Microbiol. 23:277 (from memory).
 */

/** From a lag that lasts so many generations. */
export function workOfGenerations(generations: number): number {
  return generations * Math.LN2;
}

/** Hours of lag at a steady rate, 1/h: 0 without work to do, endless where nothing grows. */
export function lagH(work: number, ratePerH: number): number {
  return work === 0 ? 0 : work / ratePerH;
}

/** Q0, the physiological state that work h0 stands for; infinite where there is no lag. */
export function physiologicalState(work: number): number {
  return 1 / Math.expm1(work);
}

/** α0 = Q0 ÷ (1 + Q0) = exp(−h0). */
export function readyFraction(work: number): number {
  return Math.exp(-work);
}

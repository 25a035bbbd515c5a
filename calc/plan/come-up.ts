/** How the time to heat the middle grows with the smaller side: between these powers of it. Common practice, no source. */
const LEAST_POWER = 1.5;
const MOST_POWER = 2;

/** Minutes between which the true time lies. */
export interface ComeUpBand {
  readonly leastMin: number;
  /** The one to plan by. */
  readonly mostMin: number;
}

/**
 * Time to heat the middle of a mould of another thickness, from a time that is known: it follows the smaller side of
 * the cross-section, nearly squared, and hardly the length or the weight. Two moulds take as long as one unless the
 * bath cools. For planning only: the probe says when it is done.
 * Derived from heat conduction in a well-stirred bath; the lower power from experience. Common practice, no source.
 *
 * @param knownMin time that was measured
 * @param knownMm smaller side of that mould
 * @param wantedMm smaller side of the other
 * @example comeUpForThickness(90, 60, 80) // 139 to 160 min
 */
export function comeUpForThickness(knownMin: number, knownMm: number, wantedMm: number): ComeUpBand | null {
  if (![knownMin, knownMm, wantedMm].every((value) => value > 0 && Number.isFinite(value))) return null;
  const times = [LEAST_POWER, MOST_POWER].map((power) => knownMin * (wantedMm / knownMm) ** power);
  return { leastMin: Math.min(...times), mostMin: Math.max(...times) };
}

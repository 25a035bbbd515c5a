/**
 * Signs that a value is more than chance, as the Western Electric Company printed them (Statistical Quality Control
 * Handbook, 1956): a point beyond three sigma; two of three beyond two; four of five beyond one; eight in a row on one
 * side. Those of several points count on one side of the mean only.
 */
export type RunSignal = 'beyond-3' | 'two-of-three' | 'four-of-five' | 'eight-in-a-row';

const RULES = [
  { signal: 'beyond-3', sigmas: 3, of: 1, least: 1 },
  { signal: 'two-of-three', sigmas: 2, of: 3, least: 2 },
  { signal: 'four-of-five', sigmas: 1, of: 5, least: 4 },
  { signal: 'eight-in-a-row', sigmas: 0, of: 8, least: 8 },
] as const;

/** A difference of rounding does not put a point beyond its line. */
const NOISE = 1e-9;

/**
 * The signals each value completes: the newest point of a run must itself be on the far side.
 *
 * @param values in order; null ones are passed over
 */
export function runSignals(values: readonly (number | null)[], mean: number, sigma: number): RunSignal[][] {
  const found: RunSignal[][] = values.map(() => []);
  const known = values.flatMap((value, at) => (value === null ? [] : [{ at, z: (value - mean) / sigma }]));
  for (const [place, { at }] of known.entries())
    for (const { signal, sigmas, of, least } of RULES) {
      if (place + 1 < of) continue;
      const run = known.slice(place + 1 - of, place + 1);
      const holds = [1, -1].some((side) => {
        const beyond = ({ z }: { z: number }) => z * side > sigmas + NOISE;
        const newest = run.at(-1);
        return newest !== undefined && beyond(newest) && run.filter(beyond).length >= least;
      });
      if (holds) found[at]?.push(signal);
    }
  return found;
}

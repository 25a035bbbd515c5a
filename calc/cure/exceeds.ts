/** Room for float noise: 156.25 reached by another order of multiplying is still 156.25. */
const NOISE = 1e-9;

/** Whether a figure lies above its limit. At the limit is within it. */
export function exceeds(value: number, limit: number): boolean {
  return value > limit * (1 + NOISE);
}

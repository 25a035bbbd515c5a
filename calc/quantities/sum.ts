/**
 * Sum with the rounding error carried along (Neumaier 1974, an improved Kahan–Babuška sum), so that a batch of many
 * small weighings adds up to what the digits say. Empty gives 0; NaN in gives NaN out.
 * @example compensatedSum(Array(10).fill(0.1)) // 1
 */
export function compensatedSum(values: Iterable<number>): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return Number.isFinite(sum) ? sum + lost : sum;
}

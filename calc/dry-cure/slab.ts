/** Terms of the series: the last matters only at times far shorter than any cure. */
const TERMS = 60;

/**
 * How far the middle of a slab has come toward its final level, when both faces are held at that
 * level: 1 − (4/π) Σ (−1)ⁿ/(2n+1) · exp(−(2n+1)²π²F/4).
 *
 * Source: Crank, The Mathematics of Diffusion, plane sheet (from memory).
 *
 * @param fourier D·t ÷ (half the thickness)², 0 or more
 * @returns fraction 0–1, or null for an unusable number
 * @example slabCentreFraction(0.5625) // 0.68: 51 mm, 14 days, 3 × 10⁻¹⁰ m²/s
 */
export function slabCentreFraction(fourier: number): number | null {
  return series(fourier, (odd, n) => ((n % 2 === 0 ? 1 : -1) * 4) / (Math.PI * odd));
}

/**
 * How much of its final uptake a slab has taken, on the mean: 1 − (8/π²) Σ 1/(2n+1)² · exp(…).
 *
 * Source: Crank, as above (from memory).
 *
 * @example slabMeanFraction(0.85) // 0.90, while the middle stands at 0.84
 */
export function slabMeanFraction(fourier: number): number | null {
  return series(fourier, (odd) => 8 / (Math.PI * odd) ** 2);
}

/**
 * D·t ÷ (half thickness)² at which the middle reaches a fraction of its final level, from the first
 * term of the series. Derived; good to 0.5 % of the level from 0.3 upward.
 *
 * @returns null outside 0.3 ≤ fraction < 1
 * @example slabFourierAtCentre(0.9) // 1.031
 */
export function slabFourierAtCentre(fraction: number): number | null {
  if (!(fraction >= 0.3 && fraction < 1)) return null;
  return (4 / Math.PI ** 2) * Math.log(4 / Math.PI / (1 - fraction));
}

function series(fourier: number, weight: (odd: number, n: number) => number): number | null {
  if (!Number.isFinite(fourier) || fourier < 0) return null;
  if (fourier === 0) return 0;
  let left = 0;
  for (let n = 0; n < TERMS; n++) {
    const odd = 2 * n + 1;
    left += weight(odd, n) * Math.exp((-(odd ** 2) * Math.PI ** 2 * fourier) / 4);
  }
  return Math.min(1, Math.max(0, 1 - left));
}

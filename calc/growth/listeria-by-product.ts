import { grow } from './grow.ts';
import { isKnown, type Stay } from './in-storage.ts';
import { workOfGenerations } from './lag.ts';
import { LISTERIA_2009, productRate } from './product-factors.ts';

/** Lag of Listeria monocytogenes in generations. Mejlholm & Dalgaard 2009; from memory. Never taken larger. */
const LAG_GENERATIONS = 4.5;
/** Counts to begin and to end with, log10 per gram: one cell, and as many as such a food carries. */
const COUNTS = { start: 0, most: 8 } as const;
const MIN_PER_H = 60;

/** What was measured of the product; null is unknown. */
export interface MeasuredProduct {
  readonly ph: number | null;
  readonly waterActivity: number | null;
}

/** Growth of Listeria monocytogenes by temperature, pH and water activity, log10. Information. */
export interface ListeriaByProduct {
  readonly doubt: 'no-ph' | 'no-water-activity' | 'no-stay' | 'outside-range' | null;
  readonly withoutLag: number | null;
  readonly withLag: number | null;
}

/**
 * Growth over stays in the cold by the product's own pH and water activity, each stay at its own temperature. Nitrite
 * and lactic acid are counted as none, for the growth that leaves the most. Outside 2–25 °C, pH 5.6–7.7 and water
 * activity 0.95–1 nothing is told. Source: `mejlholm-dalgaard-2009` (from memory).
 */
export function listeriaByProduct(
  { ph, waterActivity }: MeasuredProduct,
  stays: readonly Stay[],
): ListeriaByProduct {
  const nothing = { withoutLag: null, withLag: null };
  if (ph === null) return { doubt: 'no-ph', ...nothing };
  if (waterActivity === null) return { doubt: 'no-water-activity', ...nothing };
  const known = stays.filter(isKnown);
  if (known.length === 0 || known.length < stays.length) return { doubt: 'no-stay', ...nothing };
  const product = { ph, waterActivity, nitritePpm: 0, lacticMM: 0 };
  const grown = known.map(({ tempC, timeMin }) => {
    const rate = productRate(LISTERIA_2009, { ...product, tempC });
    return rate === null ? null : (rate.perH * timeMin) / MIN_PER_H;
  });
  if (grown.includes(null)) return { doubt: 'outside-range', ...nothing };
  const integral = grown.reduce((sum: number, logs) => sum + (logs ?? 0), 0);
  const after = (work: number) =>
    grow({ log10Count: COUNTS.start, work }, integral, COUNTS.most).log10Count - COUNTS.start;
  return { doubt: null, withoutLag: after(0), withLag: after(workOfGenerations(LAG_GENERATIONS)) };
}

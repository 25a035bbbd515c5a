/** One finished cook: what the plan said and what the readings say, min. */
export interface CookTimes {
  readonly oven: string;
  readonly predictedMin: number | null;
  readonly actualMin: number | null;
}

/** How far one oven's cooks ran from their plans. */
export interface OvenBias {
  readonly oven: string;
  /** Cooks with both times. */
  readonly cooks: number;
  /** Median of actual ÷ predicted: 1.1 is a tenth longer than planned. Null without a cook. */
  readonly medianRatio: number | null;
}

/** Middle of a list, the mean of the two middle ones where their number is even. Null for none. */
export function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half];
  if (upper === undefined) return null;
  const lower = sorted[half - 1];
  return sorted.length % 2 === 1 || lower === undefined ? upper : (lower + upper) / 2;
}

/** Actual over predicted time of one cook; null while either is unknown. */
export function timeRatio({ predictedMin, actualMin }: Omit<CookTimes, 'oven'>): number | null {
  return predictedMin === null || actualMin === null || !(predictedMin > 0) ? null : actualMin / predictedMin;
}

/** The bias of each oven that is named, in the order they first appear; cooks without a name stand under ''. */
export function ovenBias(cooks: readonly CookTimes[]): OvenBias[] {
  return [...new Set(cooks.map(({ oven }) => oven))].map((oven) => {
    const ratios = cooks
      .filter((cook) => cook.oven === oven)
      .map(timeRatio)
      .filter((ratio) => ratio !== null);
    return { oven, cooks: ratios.length, medianRatio: median(ratios) };
  });
}

/** Square-root line of growth on temperature, with the bend at its warm end. */
export interface SquareRootLine {
  /** √(1/h) per °C. */
  readonly slope: number;
  /** 1/°C. */
  readonly bend: number;
  readonly minC: number;
  readonly maxC: number;
}

/**
 * Growth rate, 1/h in natural logarithms: √μ = b (T − Tmin) [1 − exp(c (T − Tmax))]. Nothing beyond the two ends.
 *
 * Source: Ratkowsky et al. 1983, J. Bacteriol. 154:1222, read in a secondary compilation.
 */
export function squareRootRatePerH(tempC: number, { slope, bend, minC, maxC }: SquareRootLine): number {
  if (!(tempC > minC && tempC < maxC)) return 0;
  return (slope * (tempC - minC) * -Math.expm1(bend * (tempC - maxC))) ** 2;
}

/** Where the line of the risk assessment meets no growth, °C. A constant of the line, no observed limit. */
const LINE_ZERO_C = -1.18;
const LINE_REF_C = 5;

/** Refrigerator temperatures for which the conversion is written, °C. */
export const REFRIGERATOR_RANGE = { minC: 0, maxC: 12 } as const;

/** Tenfolds a day at a temperature from those at 5 °C; null outside 0–12 °C. Source: `fda-fsis-listeria-2003`. */
export function refrigeratorLogsPerDay(tempC: number, at5CLogsPerDay: number): number | null {
  const { minC, maxC } = REFRIGERATOR_RANGE;
  if (!(tempC >= minC && tempC <= maxC)) return null;
  return at5CLogsPerDay * ((tempC - LINE_ZERO_C) / (LINE_REF_C - LINE_ZERO_C)) ** 2;
}

/** Tenfolds a day at 5 °C from what a trial at another temperature gave; null outside 0–12 °C. */
export function logsPerDayAt5C(tempC: number, logs: number, days: number): number | null {
  const share = refrigeratorLogsPerDay(tempC, 1);
  return share === null || !(days > 0) ? null : logs / days / share;
}

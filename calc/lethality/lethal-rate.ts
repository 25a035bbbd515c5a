/**
 * A log-linear line of heat resistance: minutes at `refC` that a minute at another temperature is worth.
 * `zC` is a temperature difference; `zAboveC` is used from `refC` upward where the line bends there.
 */
export interface LethalityLine {
  readonly refC: number;
  readonly zC: number;
  readonly zAboveC?: number;
}

/** Equivalents of 70 °C for 2 minutes as the UK advice lists them: z = 7.5 °C gives its five pairs, rounded up. Derived. */
export const LINE_70_Z7_5: LethalityLine = { refC: 70, zC: 7.5 };
/** Pasteurisation value of French practice, P(70, z 10). A convention, not a measurement. */
export const LINE_70_Z10: LethalityLine = { refC: 70, zC: 10 };
/** Cold-growing C. botulinum, UK table: z = 9 °C below and 10 °C from 90 °C. */
export const LINE_90_UK: LethalityLine = { refC: 90, zC: 9, zAboveC: 10 };
/** The same, United States guidance: z = 7 °C below 90 °C. */
export const LINE_90_US: LethalityLine = { refC: 90, zC: 7, zAboveC: 10 };

/** z that holds at a temperature. */
export function zAt(line: LethalityLine, tempC: number): number {
  return tempC >= line.refC ? (line.zAboveC ?? line.zC) : line.zC;
}

/**
 * Lethal rate L = 10^((T − Tref) ÷ z): minutes at Tref per minute at T.
 * @example lethalRate(62.5, { refC: 70, zC: 7.5 }) // 0.1
 */
export function lethalRate(tempC: number, line: LethalityLine): number {
  return 10 ** ((tempC - line.refC) / zAt(line, tempC));
}

/** Minutes at a temperature that equal `atRefMin` minutes at Tref. */
export function equivalentMin(atRefMin: number, tempC: number, line: LethalityLine): number {
  return atRefMin / lethalRate(tempC, line);
}

/** D at a temperature, min, from D at Tref on the same line. */
export function decimalReductionMin(dRefMin: number, tempC: number, line: LethalityLine): number {
  return equivalentMin(dRefMin, tempC, line);
}

/** Log reductions of a pasteurisation value. Only with the Tref and z that the value was computed with. */
export function logReduction(valueMin: number, dRefMin: number): number {
  return valueMin / dRefMin;
}

export interface HeatResistance {
  readonly tempC: number;
  readonly dMin: number;
}

/**
 * z from measured D-values, °C: the least-squares line of log10 D on temperature; two points give it exactly.
 * @returns null with fewer than two temperatures or D-values that do not fall
 */
export function zFromPoints(points: readonly HeatResistance[]): number | null {
  const usable = points.filter(({ tempC, dMin }) => Number.isFinite(tempC) && dMin > 0);
  const count = usable.length;
  const meanC = usable.reduce((sum, { tempC }) => sum + tempC, 0) / count;
  const meanLog = usable.reduce((sum, { dMin }) => sum + Math.log10(dMin), 0) / count;
  const spread = usable.reduce((sum, { tempC }) => sum + (tempC - meanC) ** 2, 0);
  const slope =
    usable.reduce((sum, { tempC, dMin }) => sum + (tempC - meanC) * (Math.log10(dMin) - meanLog), 0) / spread;
  return count >= 2 && spread > 0 && slope < 0 ? -1 / slope : null;
}

/** Molar mass of sodium chloride, g/mol: 22.9898 + 35.453. Derived. */
const SALT_G_PER_MOL = 58.4428;
/** Molar mass of water, kg/mol. */
const WATER_KG_PER_MOL = 0.018015;
/** Pitzer and Mayorga 1973, sodium chloride at 25 °C (from memory). */
const PITZER = { beta0: 0.0765, beta1: 0.2664, cPhi: 0.00127, aPhi: 0.3915, b: 1.2, alpha: 2 } as const;
/** Resnik and Chirife form, per cent of water-phase salt (from memory). */
const QUADRATIC = { linear: 0.0052471, square: 0.00012206 } as const;
/** Saturated brine holds no more salt on its water. */
const SATURATED_WPS = 0.26395;

/** Moles of salt to the kilogram of water at a water-phase salt; null outside 0 to saturation. */
export function molality(waterPhaseSaltFraction: number): number | null {
  if (!isWaterPhase(waterPhaseSaltFraction)) return null;
  return ((waterPhaseSaltFraction / (1 - waterPhaseSaltFraction)) * 1000) / SALT_G_PER_MOL;
}

/**
 * Water activity from molality and osmotic coefficient: exp(−φ · 2 · m · M_water).
 *
 * Source: Robinson and Stokes.
 *
 * @param waterKgPerMol molar mass of water; published examples round it to 0.018
 * @example awFromOsmotic(6, 1.271) // 0.760
 */
export function awFromOsmotic(
  molPerKg: number,
  osmotic: number,
  waterKgPerMol = WATER_KG_PER_MOL,
): number | null {
  if (!(molPerKg >= 0) || !(osmotic > 0) || !Number.isFinite(molPerKg * osmotic)) return null;
  return Math.exp(-osmotic * 2 * molPerKg * waterKgPerMol);
}

/**
 * Osmotic coefficient of salt solution at 25 °C.
 *
 * Source: Pitzer and Mayorga 1973 (parameters from memory; two published points met to 0.0006).
 */
export function osmoticCoefficient(molPerKg: number): number | null {
  if (!(molPerKg >= 0) || !Number.isFinite(molPerKg)) return null;
  const root = Math.sqrt(molPerKg);
  const debye = (-PITZER.aPhi * root) / (1 + PITZER.b * root);
  const second = PITZER.beta0 + PITZER.beta1 * Math.exp(-PITZER.alpha * root);
  return 1 + debye + molPerKg * second + molPerKg ** 2 * PITZER.cPhi;
}

/** Water activity of salt on water by the Pitzer form; null outside 0 to saturation. */
export function waterActivityPitzer(waterPhaseSaltFraction: number): number | null {
  const m = molality(waterPhaseSaltFraction);
  if (m === null) return null;
  return m === 0 ? 1 : awFromOsmotic(m, osmoticCoefficient(m) ?? 1);
}

/**
 * The same by the quadratic of Resnik and Chirife: 1 − 0.0052471·W − 0.00012206·W², W in per cent.
 *
 * @example waterActivityQuadratic(0.08) // 0.9502
 */
export function waterActivityQuadratic(waterPhaseSaltFraction: number): number | null {
  if (!isWaterPhase(waterPhaseSaltFraction)) return null;
  const percent = waterPhaseSaltFraction * 100;
  return 1 - QUADRATIC.linear * percent - QUADRATIC.square * percent ** 2;
}

/** Water activity from salt alone. Sugar, lactate and peptides lower the true one, so it errs to the wet side. */
export interface WaterActivityEstimate {
  readonly pitzer: number;
  readonly quadratic: number;
  readonly low: number;
  /** The one to plan by: the wetter of the two. */
  readonly high: number;
}

/** Both estimates and their range; null outside 0 to saturation. Never a measurement. */
export function estimateWaterActivity(waterPhaseSaltFraction: number): WaterActivityEstimate | null {
  const pitzer = waterActivityPitzer(waterPhaseSaltFraction);
  const quadratic = waterActivityQuadratic(waterPhaseSaltFraction);
  if (pitzer === null || quadratic === null) return null;
  return { pitzer, quadratic, low: Math.min(pitzer, quadratic), high: Math.max(pitzer, quadratic) };
}

/**
 * Water activity of saturated salt by temperature: ln aw = 23.1092 ÷ T − 0.3607.
 *
 * Source: Labuza's regression; at 25 °C it gives 0.7534 where the table beside it prints 0.755.
 */
export function saturatedSaltActivity(tempC: number): number | null {
  return tempC >= 0 && tempC <= 60 ? Math.exp(23.1092 / (tempC + 273.15) - 0.3607) : null;
}

/** One strength of the water-activity table. */
export interface WaterActivityRow {
  readonly waterPhaseSaltPercent: number;
  readonly molality: number;
  readonly pitzer: number;
  readonly quadratic: number;
}

const PERCENTS = [2, 3, 3.5, 4, 6, 8, 10, 12, 14, 16, 18, 20] as const;

/** Water activity of salt on water at 25 °C, by both forms. Derived; coefficients from memory. */
export const WATER_ACTIVITY_TABLE: readonly WaterActivityRow[] = PERCENTS.map((percent) => ({
  waterPhaseSaltPercent: percent,
  molality: molality(percent / 100) ?? 0,
  pitzer: waterActivityPitzer(percent / 100) ?? 0,
  quadratic: waterActivityQuadratic(percent / 100) ?? 0,
}));

function isWaterPhase(fraction: number): boolean {
  return fraction >= 0 && fraction <= SATURATED_WPS;
}

import type { Mark, SourceId } from '../sources/index.ts';
import { BRINE_FREEZING, BRINE_TABLE } from './brine-table.ts';
import { interpolate } from './interpolate.ts';

/** Water at 60 °F: g/mL, and lb to the US gallon. Derived from its density. */
export const WATER_G_PER_ML = 0.99904;
export const WATER_LB_PER_GALLON = 8.337;
/** What the federal pickle limits take a US gallon of pickle to weigh. 9 CFR 424.21(c), by its figures. */
export const LAW_PICKLE_LB_PER_GALLON = 10;
/** Saturated brine at 60 °F, fraction of salt: the end of the scale. */
export const SATURATED_FRACTION = 0.26395;
/** Modulus of the Baumé scale of the United States. */
const BAUME_MODULUS = 145;

/** Salometers that share a name and differ in what 100 degrees is. */
export const SALOMETER_SCALES = [
  {
    id: 'saturation-60F',
    saltAt100Fraction: SATURATED_FRACTION,
    source: 'salometer-manual',
    mark: 'confirmed',
  },
  { id: 'hydrometer-26-4', saltAt100Fraction: 0.264, source: 'hydrometer-scales', mark: 'confirmed' },
  { id: 'hydrometer-26-5', saltAt100Fraction: 0.265, source: 'hydrometer-scales', mark: 'confirmed' },
  { id: 'pickling', saltAt100Fraction: 0.25, source: 'salometer-manual', mark: 'confirmed' },
] as const satisfies readonly { id: string; saltAt100Fraction: number; source: SourceId; mark: Mark }[];

export type SalometerScaleId = (typeof SALOMETER_SCALES)[number]['id'];

/**
 * Degrees salometer of a brine: 100 × salt ÷ salt at 100 degrees. Meat plants also have salometers
 * scaled at 38 °F; those are not these.
 *
 * Source: The salometer and how to use it.
 *
 * @param scale the saturation scale unless named
 * @returns null for a fraction that is not 0–1
 * @example salometerDegrees(0.1) // 37.89; on the pickling scale 40
 */
export function salometerDegrees(
  saltFraction: number,
  scale: SalometerScaleId = 'saturation-60F',
): number | null {
  if (!isFraction(saltFraction)) return null;
  return (100 * saltFraction) / saltAt100(scale);
}

/** Salt of a brine that reads so many degrees, fraction; null below 0 or above 100. */
export function saltFromSalometer(
  degrees: number,
  scale: SalometerScaleId = 'saturation-60F',
): number | null {
  if (!(degrees >= 0 && degrees <= 100)) return null;
  return (degrees * saltAt100(scale)) / 100;
}

function saltAt100(scale: SalometerScaleId): number {
  return SALOMETER_SCALES.find(({ id }) => id === scale)?.saltAt100Fraction ?? SATURATED_FRACTION;
}

/**
 * Degrees Baumé of a liquid heavier than water: 145 − 145 ÷ specific gravity at 60 °F.
 *
 * @returns null below 1
 * @example baumeFromGravity(1.204) // 24.57
 */
export function baumeFromGravity(specificGravity: number): number | null {
  if (!Number.isFinite(specificGravity) || specificGravity < 1) return null;
  return BAUME_MODULUS - BAUME_MODULUS / specificGravity;
}

/** Specific gravity of so many degrees Baumé; null outside 0 to under 145. */
export function gravityFromBaume(baume: number): number | null {
  return baume >= 0 && baume < BAUME_MODULUS ? BAUME_MODULUS / (BAUME_MODULUS - baume) : null;
}

const GRAVITY = BRINE_TABLE.map(
  (row) => [(row.salometer / 100) * SATURATED_FRACTION, row.specificGravity] as const,
);

/** Specific gravity 60/60 °F of salt brine, between the rows of the brine table; null beyond saturation. */
export function brineGravity(saltFraction: number): number | null {
  return interpolate(GRAVITY, saltFraction);
}

/**
 * Where a brine freezes, °C, between the points of the CRC Handbook; null beyond the eutectic.
 *
 * @example brineFreezesC(0.1) // −6.56
 */
export function brineFreezesC(saltFraction: number): number | null {
  return interpolate(
    BRINE_FREEZING.map(({ saltPercent, freezesC }) => [saltPercent, freezesC] as const),
    saltFraction * 100,
  );
}

/** Scales a brine may be measured in. */
export type BrineScale =
  | 'fraction'
  | 'salometer'
  | 'specific-gravity'
  | 'baume'
  | 'g-per-litre-brine'
  | 'g-per-kg-water'
  | 'lb-per-gallon-brine'
  | 'lb-per-gallon-water';

/** A brine in every scale. */
export type BrineStrength = Readonly<Record<BrineScale, number>>;

/**
 * A salt brine in every scale, at 60 °F. Sugar and other solids make a hydrometer read higher.
 *
 * @param saltFraction salt ÷ brine by mass
 * @returns null beyond saturation
 * @example brineStrength(0.10558)?.['g-per-kg-water'] // 118.0
 */
export function brineStrength(saltFraction: number): BrineStrength | null {
  const gravity = brineGravity(saltFraction);
  const degrees = salometerDegrees(saltFraction);
  const baume = gravity === null ? null : baumeFromGravity(gravity);
  if (gravity === null || degrees === null || baume === null) return null;
  const onWater = saltFraction / (1 - saltFraction);
  return {
    fraction: saltFraction,
    salometer: degrees,
    'specific-gravity': gravity,
    baume,
    'g-per-litre-brine': saltFraction * gravity * WATER_G_PER_ML * 1000,
    'g-per-kg-water': onWater * 1000,
    'lb-per-gallon-brine': saltFraction * gravity * WATER_LB_PER_GALLON,
    'lb-per-gallon-water': onWater * WATER_LB_PER_GALLON,
  };
}

/**
 * Salt of a brine from a reading in any scale: the inverse of `brineStrength`.
 *
 * @returns fraction, or null when no brine reads so
 * @example saltFromReading('baume', 10.4) // 0.106
 */
export function saltFromReading(scale: BrineScale, reading: number): number | null {
  if (!Number.isFinite(reading)) return null;
  const read = (fraction: number) => brineStrength(fraction)?.[scale] ?? Number.NaN;
  let low = 0;
  let high = SATURATED_FRACTION;
  if (!(reading >= read(low) && reading <= read(high))) return null;
  // Every scale rises with the salt, so halving finds the one brine that reads so.
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (read(middle) < reading) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function isFraction(value: number): boolean {
  return value >= 0 && value <= 1;
}

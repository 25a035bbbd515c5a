import type { Unit } from './entry.ts';

/** Kinds of quantity. A temperature and a difference of temperatures are two kinds: only the second has no offset. */
export type QuantityKind =
  | 'mass'
  | 'length'
  | 'volume'
  | 'temperature'
  | 'temperature-difference'
  | 'pressure'
  | 'time'
  | 'fraction'
  | 'ppm'
  | 'density'
  | 'count'
  | 'money'
  | 'ratio';

/**
 * base = (value − zero) × num ÷ den, all three exact in binary or whole, so that a conversion is two roundings at most.
 */
export interface UnitDefinition {
  readonly kind: QuantityKind;
  readonly num: number;
  readonly den: number;
  /** Reading of this unit where the base unit reads 0. Only Fahrenheit has one. */
  readonly zero: number;
  /** How it is written beside a number. */
  readonly label: string;
}

function unit(kind: QuantityKind, label: string, num: number, den = 1, zero = 0): UnitDefinition {
  return { kind, num, den, zero, label };
}

/**
 * Every unit with its exact definition. Base units: g, mm, mL, °C, kPa, min, mass fraction.
 *
 * Pound = 453.59237 g exactly, ounce = 1/16 pound, inch = 25.4 mm and foot = 304.8 mm exactly, t/°C = (t/°F − 32)/1.8:
 * NIST Special Publication 811 (2008), appendix B.8. A pound-force per square inch follows from these and the
 * standard acceleration 9.80665 m/s²: 453.59237 × 9.80665 / (25.4²) kPa = 6.894757… (same appendix: 6.894 757 kPa).
 */
export const UNITS: Readonly<Record<Unit, UnitDefinition>> = {
  mg: unit('mass', 'mg', 1, 1000),
  g: unit('mass', 'g', 1),
  kg: unit('mass', 'kg', 1000),
  oz: unit('mass', 'oz', 45_359_237, 1_600_000),
  lb: unit('mass', 'lb', 45_359_237, 100_000),
  mm: unit('length', 'mm', 1),
  cm: unit('length', 'cm', 10),
  m: unit('length', 'm', 1000),
  in: unit('length', 'in', 254, 10),
  ft: unit('length', 'ft', 3048, 10),
  mL: unit('volume', 'mL', 1),
  cL: unit('volume', 'cL', 10),
  dL: unit('volume', 'dL', 100),
  L: unit('volume', 'L', 1000),
  C: unit('temperature', '°C', 1),
  F: unit('temperature', '°F', 5, 9, 32),
  dC: unit('temperature-difference', '°C', 1),
  dF: unit('temperature-difference', '°F', 5, 9),
  kPa: unit('pressure', 'kPa', 1),
  hPa: unit('pressure', 'hPa', 1, 10),
  psi: unit('pressure', 'psi', (453.59237 * 9.80665) / (25.4 * 25.4)),
  min: unit('time', 'min', 1),
  s: unit('time', 's', 1, 60),
  h: unit('time', 'h', 60),
  d: unit('time', 'd', 1440),
  '%': unit('fraction', '%', 1, 100),
  'g/kg': unit('fraction', 'g/kg', 1, 1000),
  ppm: unit('ppm', 'mg/kg', 1),
  'g/mL': unit('density', 'g/mL', 1),
  count: unit('count', '', 1),
  // The kitchen's own currency: its name is a label of the plan, not a unit.
  money: unit('money', '', 1),
  /** So much to one: water to protein. */
  ratio: unit('ratio', '', 1),
};

/** The unit `calc` works in for each kind. A fraction is 0–1 inside and % on the screen. */
export const BASE_UNITS: Readonly<Record<QuantityKind, Unit>> = {
  mass: 'g',
  length: 'mm',
  volume: 'mL',
  temperature: 'C',
  'temperature-difference': 'dC',
  pressure: 'kPa',
  time: 'min',
  fraction: '%',
  ppm: 'ppm',
  density: 'g/mL',
  count: 'count',
  money: 'money',
  ratio: 'ratio',
};

/** Units of one kind, in the order of a pick list. */
export function unitsOf(kind: QuantityKind): Unit[] {
  return (Object.keys(UNITS) as Unit[]).filter((name) => UNITS[name].kind === kind);
}

/** How a unit is written beside a number: `°C`, `mg/kg`. A count has none. */
export function unitLabel(name: Unit): string {
  return UNITS[name].label;
}

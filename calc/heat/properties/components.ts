/** The parts a food is made of, as mass fractions 0–1. Added salt belongs to `ash`. */
export interface Composition {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
}

export type Component = keyof Composition;

/** `a0 + a1 t + a2 t²`, t in °C, held to −40…150 °C. */
export type Quadratic = readonly [number, number, number];

/** The temperatures the quadratics were measured over, °C. */
const MEASURED_C = { low: -40, high: 150 } as const;

/** Value of a quadratic at a temperature in °C; below −40 and above 150 °C that of the end. */
export function quadraticAt([a0, a1, a2]: Quadratic, tempC: number): number {
  const heldC = Math.min(MEASURED_C.high, Math.max(MEASURED_C.low, tempC));
  return a0 + heldC * (a1 + heldC * a2);
}

export const COMPONENTS: readonly Component[] = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'];

/** Density, kg/m³. Source: `choi-okos-1986`, read in `ashrae-refrigeration-2006-foods`. */
export const DENSITY: Readonly<Record<Component | 'ice', Quadratic>> = {
  water: [997.18, 0.0031439, -0.0037574],
  ice: [916.89, -0.13071, 0],
  protein: [1329.9, -0.5184, 0],
  fat: [925.59, -0.41757, 0],
  carbohydrate: [1599.1, -0.31046, 0],
  fibre: [1311.5, -0.36589, 0],
  ash: [2423.8, -0.28063, 0],
};

/** Thermal conductivity, W/(m·K). Source: `choi-okos-1986`, read in `ashrae-refrigeration-2006-foods`. */
export const CONDUCTIVITY: Readonly<Record<Component | 'ice', Quadratic>> = {
  water: [0.57109, 0.0017625, -6.7036e-6],
  ice: [2.2196, -0.0062489, 1.0154e-4],
  protein: [0.17881, 0.0011958, -2.7178e-6],
  fat: [0.18071, -2.7604e-4, -1.7749e-7],
  carbohydrate: [0.20141, 0.0013874, -4.3312e-6],
  fibre: [0.18331, 0.0012497, -3.1683e-6],
  ash: [0.32962, 0.0014011, -2.9069e-6],
};

/** Specific heat, J/(kg·K), of everything but liquid water. Same sources. */
export const SPECIFIC_HEAT: Readonly<Record<Exclude<Component, 'water'> | 'ice', Quadratic>> = {
  ice: [2062.3, 6.0769, 0],
  protein: [2008.2, 1.2089, -0.0013129],
  fat: [1984.2, 1.4733, -0.0048008],
  carbohydrate: [1548.8, 1.9625, -0.0059399],
  fibre: [1845.9, 1.8306, -0.0046509],
  ash: [1092.6, 1.8896, -0.0036817],
};

/**
 * Which constant term liquid water is given, J/(kg·K).
 * `original` is the paper's own (4176.2 above 0 °C, 4081.7 below). `handbook` is 4128.9 for both, the
 * mean of the two, as one handbook prints it: about 1.2 % light, kept to compare with tables that use it.
 */
export type WaterHeat = 'original' | 'handbook';

const WATER_ABOVE: Readonly<Record<WaterHeat, Quadratic>> = {
  original: [4176.2, -0.090864, 0.0054731],
  handbook: [4128.9, -0.090864, 0.0054731],
};

const WATER_BELOW: Readonly<Record<WaterHeat, Quadratic>> = {
  original: [4081.7, -5.3062, 0.99516],
  handbook: [4128.9, -5.3062, 0.99516],
};

/** Specific heat of liquid water, J/(kg·K); below 0 °C that of the water still unfrozen. */
export function waterHeatAt(tempC: number, choice: WaterHeat = 'original'): number {
  return quadraticAt((tempC >= 0 ? WATER_ABOVE : WATER_BELOW)[choice], tempC);
}

/** The same food with its fractions scaled to sum to one. All zero or not finite: null. */
export function normalised(composition: Composition): Composition | null {
  const sum = COMPONENTS.reduce((total, part) => total + composition[part], 0);
  const sound = COMPONENTS.every((part) => composition[part] >= 0);
  if (!sound || !Number.isFinite(sum) || sum <= 0) return null;
  const { water, protein, fat, carbohydrate, fibre, ash } = composition;
  return {
    water: water / sum,
    protein: protein / sum,
    fat: fat / sum,
    carbohydrate: carbohydrate / sum,
    fibre: fibre / sum,
    ash: ash / sum,
  };
}

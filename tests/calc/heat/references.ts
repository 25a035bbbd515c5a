import type { HeatShape } from '@larderwright/calc/heat';

/**
 * Numeric references for conduction, each computed twice by methods that share nothing with this project
 * (closed series or Ritz polynomials against finite volumes or finite elements, extrapolated).
 * Base: k 0.45 W/(m·K), ρ 1050 kg/m³, cp 3500 J/(kg·K), start 4 °C, no mould, film on every face.
 * derived
 */
export interface CookReference {
  readonly id: string;
  readonly shape: HeatShape;
  readonly what: string;
  /** °C at minutes. */
  readonly core: Readonly<Record<number, number>>;
  readonly centre: Readonly<Record<number, number>>;
  readonly mean?: Readonly<Record<number, number>>;
  /** Minutes at which the core reaches a temperature. */
  readonly minTo: Readonly<Record<number, number>>;
  /** Height of the core at 60 min over the depth. */
  readonly coreShare?: number;
}

export const BRICK: HeatShape = { kind: 'rectangular', lengthMm: 240, widthMm: 100, depthMm: 75 };
const LOAF: HeatShape = { kind: 'tapered', lengthMm: 240, widthMm: 115, depthMm: 75, baseWidthMm: 95 };
export const HALF_ROUND: HeatShape = { kind: 'half-cylinder', lengthMm: 240, diameterMm: 90 };
const ROLL: HeatShape = { kind: 'cylinder', lengthMm: 250, diameterMm: 70 };
export const CUBE: HeatShape = { kind: 'cube', sideMm: 25 };

export const COOKS: readonly CookReference[] = [
  {
    id: 'N01',
    shape: BRICK,
    what: 'film 300, bath 85 °C',
    core: { 30: 16.381, 60: 43.073, 90: 60.887, 120: 71.317 },
    centre: { 30: 16.381, 60: 43.073, 90: 60.887, 120: 71.317 },
    mean: { 30: 56.051, 60: 69.947, 90: 76.92, 120: 80.623 },
    minTo: { 68: 108.56, 71: 118.794 },
    coreShare: 0.5,
  },
  {
    id: 'N02',
    shape: LOAF,
    what: 'film 300, bath 85 °C',
    core: { 30: 15.86, 60: 41.784, 90: 59.64, 120: 70.348 },
    centre: { 30: 15.861, 60: 41.786, 90: 59.641, 120: 70.348 },
    mean: { 30: 55.535, 60: 69.452, 90: 76.52, 120: 80.328 },
    minTo: { 68: 111.924, 71: 122.469 },
    coreShare: 0.5032,
  },
  {
    id: 'N03',
    shape: HALF_ROUND,
    what: 'film 300, bath 85 °C',
    core: { 15: 25.336, 30: 53.724, 45: 69.369, 60: 77.276 },
    centre: { 15: 25.466, 30: 53.805, 45: 69.404, 60: 77.292 },
    mean: { 15: 58.237, 30: 72.749, 45: 79.223, 60: 82.25 },
    minTo: { 68: 43.204, 71: 47.354 },
    coreShare: 0.5215,
  },
  {
    id: 'N04',
    shape: ROLL,
    what: 'film 300, bath 85 °C',
    core: { 30: 35.863, 60: 65.893, 90: 77.656, 120: 82.187 },
    centre: { 30: 35.863, 60: 65.893, 90: 77.656, 120: 82.187 },
    mean: { 30: 64.543, 60: 77.649, 90: 82.318, 120: 84.016 },
    minTo: { 68: 63.671, 71: 69.767 },
    coreShare: 0.5,
  },
  {
    id: 'N05',
    shape: BRICK,
    what: 'film 300, bath 55 → 88 °C, time constant 40 min',
    core: { 30: 12.671, 60: 35.012, 90: 53.557, 120: 66.465 },
    centre: { 30: 12.671, 60: 35.012, 90: 53.557, 120: 66.465 },
    mean: { 30: 45.041, 60: 62.476, 90: 73.018, 120: 79.321 },
    minTo: { 68: 124.565, 71: 134.475 },
    coreShare: 0.5,
  },
  {
    id: 'N06',
    shape: BRICK,
    what: 'film 300, bath 55 → 88 °C, time constant 13.333 min',
    core: { 30: 13.849, 60: 40.069, 90: 59.891, 120: 71.952 },
    centre: { 30: 13.849, 60: 40.069, 90: 59.891, 120: 71.952 },
    mean: { 30: 52.339, 60: 69.823, 90: 78.343, 120: 82.789 },
    minTo: { 68: 108.309, 71: 116.949 },
    coreShare: 0.5,
  },
  {
    id: 'N11',
    shape: BRICK,
    what: 'top film 25 at 100 °C, the rest film 300 at 85 °C',
    core: { 30: 13.079, 60: 37.432, 90: 56.083, 120: 68.212 },
    centre: { 30: 13.61, 60: 37.969, 90: 56.321, 120: 68.253 },
    mean: { 30: 51.994, 60: 67.016, 90: 75.298, 120: 80.16 },
    minTo: { 68: 119.338, 71: 129.4 },
    coreShare: 0.5559,
  },
  {
    id: 'N12',
    shape: BRICK,
    what: 'film 100 on all faces, 85 °C',
    core: { 30: 13.594, 60: 37.764, 90: 55.737, 120: 67.147 },
    centre: { 30: 13.594, 60: 37.764, 90: 55.737, 120: 67.147 },
    mean: { 30: 50.054, 60: 65.46, 90: 73.729, 120: 78.438 },
    minTo: { 68: 122.945, 71: 134.583 },
    coreShare: 0.5,
  },
  {
    id: 'N13',
    shape: BRICK,
    what: 'film 1e6 (surface fixed), 85 °C',
    core: { 30: 18.381, 60: 46.217, 90: 63.65, 120: 73.392 },
    centre: { 30: 18.381, 60: 46.217, 90: 63.65, 120: 73.392 },
    mean: { 30: 59.354, 60: 72.197, 90: 78.41, 120: 81.578 },
    minTo: { 68: 101.267, 71: 110.819 },
    coreShare: 0.5,
  },
  {
    id: 'N14',
    shape: BRICK,
    what: 'water to half height, film 300 at 85 °C; above it film 25 at 100 °C',
    core: { 30: 12.42, 60: 35.21, 90: 53.75, 120: 66.49 },
    centre: { 30: 12.99, 60: 35.89, 90: 54.08, 120: 66.57 },
    minTo: { 68: 124.52, 71: 134.39 },
  },
  {
    id: 'N18',
    shape: BRICK,
    what: 'top film 10 at 150 °C, the rest film 300 at 85 °C',
    core: { 30: 12.169, 60: 35.9, 90: 55.289, 120: 68.467 },
    centre: { 30: 13.041, 60: 36.753, 90: 55.535, 120: 68.468 },
    mean: { 30: 51.119, 60: 66.728, 90: 75.845, 120: 81.54 },
    minTo: { 68: 118.686, 71: 127.618 },
    coreShare: 0.5711,
  },
];

export interface ChillReference {
  readonly id: string;
  readonly shape: HeatShape;
  readonly what: string;
  /** Core, °C, at which the cook (film 300, 85 °C) stops. */
  readonly stopC: number;
  /** Minutes, °C and film of the rest, then °C and film of the chill. */
  readonly rest: readonly [minutes: number, tempC: number, film: number];
  readonly chill: readonly [tempC: number, film: number];
  readonly restEnd: { readonly centreC: number; readonly meanC: number };
  readonly peak: { readonly centreC: number; readonly atMin: number };
  /** Minutes from the end of heating until the fixed centre is down to a temperature. */
  readonly minTo: Readonly<Record<number, number>>;
}

export const CHILLS: readonly ChillReference[] = [
  {
    id: 'N07',
    shape: BRICK,
    what: '15 min air 20 °C film 10, refrigerator 3 °C film 12',
    stopC: 68,
    rest: [15, 20, 10],
    chill: [3, 12],
    restEnd: { centreC: 72.002, meanC: 72.585 },
    peak: { centreC: 73.017, atMin: 26.5 },
    minTo: { 55: 95.66, 21: 255.62, 5: 563.88 },
  },
  {
    id: 'N08',
    shape: BRICK,
    what: '15 min air 20 °C film 10, blast 1 °C film 35',
    stopC: 68,
    rest: [15, 20, 10],
    chill: [1, 35],
    restEnd: { centreC: 72.002, meanC: 72.585 },
    peak: { centreC: 72.97, atMin: 25 },
    minTo: { 55: 68.81, 21: 154.18, 5: 283.01 },
  },
  {
    id: 'N09',
    shape: HALF_ROUND,
    what: '15 min air 20 °C film 10, refrigerator 3 °C film 12',
    stopC: 71,
    rest: [15, 20, 10],
    chill: [3, 12],
    restEnd: { centreC: 74.209, meanC: 69.927 },
    peak: { centreC: 74.803, atMin: 10.06 },
    minTo: { 55: 52.63, 21: 146.59, 5: 332.49 },
  },
  {
    id: 'N10',
    shape: ROLL,
    what: '5 min air 20 °C film 10, ice bath 0.5 °C film 200',
    stopC: 68,
    rest: [5, 20, 10],
    chill: [0.5, 200],
    restEnd: { centreC: 70.501, meanC: 75.534 },
    peak: { centreC: 72.726, atMin: 12 },
    minTo: { 55: 29.05, 21: 62.05, 5: 111.71 },
  },
];

import { constantMaterial, type HeatShape, type HeatStage, simulate } from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { valueAt } from './curve.ts';
import { printTable } from './print.ts';

const food = constantMaterial(0.45, 1050, 3500);
const bath: HeatStage = {
  kind: 'bath',
  end: { when: 'time', minutes: 125 },
  air: { tempC: 85, filmWm2K: 300 },
};

interface ShapeReference {
  readonly name: string;
  readonly shape: HeatShape;
  readonly stage: HeatStage;
  /** Core, °C, at minutes. */
  readonly core: Readonly<Record<number, number>>;
}

/**
 * derived: quadratic finite elements and Crank–Nicolson in scikit-fem 12.0.2, a general-purpose library, two or three
 * meshes compared or extrapolated (agreement 0.01 °C unless stated). 4 °C at the start, k 0.45, ρ 1050, cp 3500.
 */
const SHAPES: readonly ShapeReference[] = [
  {
    name: 'roof 90 × 70 mm, 280 long',
    shape: { kind: 'roof', lengthMm: 280, widthMm: 90, depthMm: 70 },
    stage: bath,
    core: { 10: 11.925, 20: 34.895, 30: 53.103, 45: 69.231, 60: 77.246 },
  },
  {
    name: 'oval 200 × 110 mm, 80 deep',
    shape: { kind: 'oval', lengthMm: 200, widthMm: 110, depthMm: 80 },
    stage: bath,
    core: { 15: 4.901, 30: 13.165, 45: 25.753, 60: 38.082, 90: 57.051 },
  },
  {
    name: 'loaf 240 × 115 mm at the rim, 210 × 90 at the base, 75 deep',
    shape: { kind: 'tapered', lengthMm: 240, widthMm: 115, depthMm: 75, baseLengthMm: 210, baseWidthMm: 90 },
    stage: bath,
    core: { 30: 16.169, 60: 42.538, 90: 60.409, 120: 70.998 },
  },
  {
    name: 'half-cylinder of 90 mm in 30 mm of water, ends closed',
    shape: { kind: 'half-cylinder', lengthMm: 240, diameterMm: 90 },
    stage: {
      ...bath,
      air: { tempC: 100, filmWm2K: 25 },
      water: { levelMm: 30, filmWm2K: 300, bath: { kind: 'course', tempC: 85 } },
      faces: { end: 'closed' },
    },
    // The water line cuts an element, so three meshes scatter by ±0.03 °C; their mean.
    core: { 15: 17.81, 30: 42.24, 45: 59.92, 60: 71.31, 75: 78.33, 90: 82.43 },
  },
];

describe('shapes without a series', () => {
  const rows: (string | number)[][] = [];
  afterAll(() =>
    printTable('Core against a general-purpose finite-element library, °C', ['shape', 'at min: error'], rows),
  );

  it.each(SHAPES)('$name: core within 0.15 °C of an independent solver', ({ name, shape, stage, core }) => {
    const run = simulate({ shape, material: food, startC: 4 }, [stage], { everyMin: 0.5 });
    if (run === null) throw new Error('a sound problem was refused');
    const errors = Object.entries(core).map(([minute, wanted]) => ({
      minute,
      error: valueAt(run.timesMin, run.coreC, Number(minute)) - wanted,
    }));
    rows.push([name, errors.map(({ minute, error }) => `${minute}: ${error.toFixed(3)}`).join('  ')]);
    for (const { error } of errors) expect(Math.abs(error)).toBeLessThan(0.15);
  });

  it('an oval as wide as it is long is a standing cylinder', () => {
    const times = [30, 60, 90];
    const core = (shape: HeatShape) => {
      const run = simulate({ shape, material: food, startC: 4 }, [bath]);
      return times.map((minute) => (run === null ? Number.NaN : valueAt(run.timesMin, run.coreC, minute)));
    };
    const oval = core({ kind: 'oval', lengthMm: 100, widthMm: 100, depthMm: 70 });
    const pot = core({ kind: 'standing-cylinder', diameterMm: 100, depthMm: 70 });
    for (const [index, value] of oval.entries()) expect(value).toBeCloseTo(pot[index] ?? Number.NaN, 6);
  });

  it('half a square, cut along its diagonal and all its faces held, follows the sine series', () => {
    // Limiting case, derived: modes sin mX sin nY − sin nX sin mY of the right-angled isosceles triangle.
    const leg = 80;
    const [width, depth] = [leg * Math.SQRT2, leg / Math.SQRT2];
    const run = simulate(
      { shape: { kind: 'roof', lengthMm: 300, widthMm: width, depthMm: depth }, material: food, startC: 80 },
      [
        {
          kind: 'ice-bath',
          end: { when: 'time', minutes: 40 },
          air: { tempC: 0, filmWm2K: 2e4 },
          faces: { end: 'closed' },
        },
      ],
      { everyMin: 0.5 },
    );
    if (run === null) throw new Error('a sound problem was refused');
    for (const minute of [10, 20, 30, 40]) {
      const hottest = hottestOfTriangle(leg, minute);
      expect(Math.abs(valueAt(run.timesMin, run.hottestC, minute) - hottest)).toBeLessThan(0.2);
    }
  });
});

/** Hottest spot on the line of symmetry of the triangle with legs `leg` mm along X and Y, from 80 °C, faces at 0 °C. */
function hottestOfTriangle(leg: number, minute: number): number {
  const alpha = (0.45 / (1050 * 3500)) * 6e7;
  /** ∫∫ over 0 < Y < X < π of sin mX sin nY, m and n unlike. */
  const half = (m: number, n: number) => {
    const product = (m * (1 - (-1) ** (m + n))) / (m * m - n * n);
    return ((1 - (-1) ** m) / m - product) / n;
  };
  let best = 0;
  for (let share = 0.02; share < 1; share += 0.005) {
    // The line of symmetry from the right angle (π, 0) to the middle of the long side: X = π − s, Y = s.
    const [x, y] = [Math.PI - (share * Math.PI) / 2, (share * Math.PI) / 2];
    let sum = 0;
    for (let m = 2; m <= 24; m++) {
      for (let n = 1; n < m; n++) {
        const mode = (a: number, b: number) =>
          Math.sin(m * a) * Math.sin(n * b) - Math.sin(n * a) * Math.sin(m * b);
        const weight = (half(m, n) - half(n, m)) * (4 / Math.PI ** 2);
        sum += weight * mode(x, y) * Math.exp((-(m * m + n * n) * Math.PI ** 2 * alpha * minute) / leg ** 2);
      }
    }
    best = Math.max(best, 80 * sum);
  }
  return best;
}

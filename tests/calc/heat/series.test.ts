import { constantMaterial, type Face, type HeatShape, simulate } from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { valueAt } from './curve.ts';
import { theta } from './judge/series.ts';
import { printTable } from './print.ts';

const K = 0.45;
const food = constantMaterial(K, 1050, 3500);
const ALPHA_MM2_MIN = (K / (1050 * 3500)) * 6e7;
const STEP_C = 80;
const BIOTS = [0.5, 1, 5, 10, 50, 100];
const FOURIERS = [0.05, 0.1, 0.2, 0.5, 1, 2];

interface Case {
  readonly name: string;
  readonly shape: HeatShape;
  /** Half-width that Biot and Fourier are counted by, mm. */
  readonly halfMm: number;
  readonly closed: readonly Face[];
  readonly wanted: (biot: number, fourier: number) => number;
}

/** A slab factor for a half-width other than the one Biot and Fourier are counted by. */
const across = (ratio: number) => (biot: number, fourier: number) =>
  theta('slab', biot * ratio, fourier / ratio ** 2);

const CASES: readonly Case[] = [
  {
    name: 'slab',
    shape: { kind: 'slab', thicknessMm: 60 },
    halfMm: 30,
    closed: [],
    wanted: (biot, fourier) => theta('slab', biot, fourier),
  },
  {
    name: 'long cylinder',
    shape: { kind: 'cylinder', diameterMm: 70, lengthMm: 200 },
    halfMm: 35,
    closed: ['end'],
    wanted: (biot, fourier) => theta('cylinder', biot, fourier),
  },
  {
    name: 'short cylinder, lying',
    shape: { kind: 'cylinder', diameterMm: 70, lengthMm: 105 },
    halfMm: 35,
    closed: [],
    wanted: (biot, fourier) => theta('cylinder', biot, fourier) * across(1.5)(biot, fourier),
  },
  {
    name: 'short cylinder, standing',
    shape: { kind: 'standing-cylinder', diameterMm: 90, depthMm: 60 },
    halfMm: 30,
    closed: [],
    wanted: (biot, fourier) => theta('slab', biot, fourier) * theta('cylinder', 1.5 * biot, fourier / 2.25),
  },
  {
    name: 'half-cylinder, flat side closed',
    shape: { kind: 'half-cylinder', diameterMm: 90, lengthMm: 240 },
    halfMm: 45,
    closed: ['top', 'end'],
    wanted: (biot, fourier) => theta('cylinder', biot, fourier),
  },
  {
    name: 'brick',
    shape: { kind: 'rectangular', lengthMm: 240, widthMm: 100, depthMm: 75 },
    halfMm: 37.5,
    closed: [],
    wanted: (biot, fourier) =>
      theta('slab', biot, fourier) * across(50 / 37.5)(biot, fourier) * across(3.2)(biot, fourier),
  },
  {
    name: 'cube',
    shape: { kind: 'cube', sideMm: 60 },
    halfMm: 30,
    closed: [],
    wanted: (biot, fourier) => theta('slab', biot, fourier) ** 3,
  },
];

describe('the core follows the analytic series within 0.1 °C of an 80 °C step', () => {
  const rows: (string | number)[][] = [];
  afterAll(() =>
    printTable(
      'Largest error against the series over Fourier 0.05–2, °C',
      ['shape', ...BIOTS.map((bi) => `Bi ${bi}`)],
      rows,
    ),
  );

  it.each(CASES)('in a $name', ({ name, shape, halfMm, closed, wanted }) => {
    const errors = BIOTS.map((biot) => {
      const minutes = FOURIERS.map((fourier) => (fourier * halfMm * halfMm) / ALPHA_MM2_MIN);
      const run = simulate(
        { shape, material: food, startC: STEP_C },
        [
          {
            kind: 'refrigerate',
            end: { when: 'time', minutes: Math.max(...minutes) },
            air: { tempC: 0, filmWm2K: (biot * K) / (halfMm / 1000) },
            faces: Object.fromEntries(closed.map((face) => [face, 'closed'])),
          },
        ],
        { everyMin: (0.025 * halfMm * halfMm) / ALPHA_MM2_MIN },
      );
      if (run === null) throw new Error('a sound problem was refused');
      // A closed flat side makes the middle of the full cylinder the top of the half.
      const curve = closed.includes('top') ? run.topC : run.hottestC;
      return FOURIERS.reduce((worst, fourier, index) => {
        const error =
          valueAt(run.timesMin, curve, minutes[index] ?? Number.NaN) - STEP_C * wanted(biot, fourier);
        return Math.abs(error) > Math.abs(worst) ? error : worst;
      }, 0);
    });
    rows.push([name, ...errors.map((error) => error.toFixed(3))]);
    for (const error of errors) expect(Math.abs(error)).toBeLessThan(0.1);
  });
});

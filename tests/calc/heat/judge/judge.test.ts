import { describe, expect, it } from 'vitest';
import { even, type FaceIndex, type JudgeProblem, judge, plain } from './judge.ts';
import { type Body, termsOf, theta } from './series.ts';

const START = 80;
const HALF = 0.04;
const K = 0.45;
const RHO_C = 1050 * 3500;
const ALPHA = K / RHO_C;
const food = plain(K, 1050, 3500);
const BIOTS = [0.5, 5, 100];
const FOURIERS = [0.05, 0.2, 0.5, 1, 2];

/** Faces listed are in a bath of 0 °C at the film that makes the Biot number; the rest let nothing through. */
function stepProblem(
  coordinates: JudgeProblem['coordinates'],
  edges: JudgeProblem['edges'],
  wet: readonly FaceIndex[],
  biot: number,
) {
  const film = (biot * K) / HALF;
  return judge({
    coordinates,
    edges,
    materialAt: () => food,
    startC: START,
    outside: (face) => (wet.includes(face) ? { film, tempC: 0 } : null),
  });
}

/** The middle itself, from the two cells beside it: the slope there is nil. */
const middleC = (inner: number, outer: number): number => (9 * inner - outer) / 8;

const BODIES: readonly [Body, JudgeProblem['coordinates'], JudgeProblem['edges']][] = [
  ['slab', 'cartesian', [even(0, HALF, 24), [0, 1], [0, 1]]],
  ['cylinder', 'cylindrical', [even(0, HALF, 24), [0, 1], [0, 1]]],
  ['sphere', 'spherical', [even(0, HALF, 24), [1, 2], [0, 1]]],
];

describe('the series', () => {
  it('have the roots of the printed tables', () => {
    // Carslaw & Jaeger (1959), recomputed to 1e-14 apart from this code
    const rows: readonly [Body, number, 'zeta' | 'c', readonly number[]][] = [
      ['slab', 1, 'zeta', [0.86033, 3.42562, 6.4373, 9.52933, 12.64529, 15.77129]],
      ['slab', 10, 'c', [1.26196, -0.39343, 0.21043, -0.13085, 0.08812, -0.06272]],
      ['cylinder', 5, 'zeta', [1.98981, 4.71314, 7.61771, 10.6223, 13.67856, 16.76298]],
      ['cylinder', 0.5, 'c', [1.11425, -0.15716, 0.06619, -0.03828, 0.02564, -0.01869]],
      ['sphere', 2, 'zeta', [2.02876, 4.91318, 7.97867, 11.08554, 14.20744, 17.33638]],
      ['sphere', 50, 'c', [1.99622, -1.98501, 1.96672, -1.94194, 1.91139, -1.8759]],
    ];
    for (const [body, biot, what, wanted] of rows) {
      for (const [index, term] of termsOf(body, biot, 6).entries()) {
        expect(Math.abs(term[what] - (wanted[index] ?? Number.NaN))).toBeLessThan(1.1e-5);
      }
    }
  });

  it('give the centre temperatures of the printed tables', () => {
    // derived: 30 terms, computed apart from this code
    const rows: readonly [Body, number, readonly number[]][] = [
      ['slab', 0.5, [0.999871, 0.9726, 0.864114, 0.698383]],
      ['slab', 5, [0.999046, 0.864881, 0.523109, 0.220721]],
      ['slab', 50, [0.997434, 0.786067, 0.388784, 0.118776]],
      ['cylinder', 0.5, [0.999426, 0.926659, 0.715749, 0.459846]],
      ['cylinder', 5, [0.995845, 0.671418, 0.207554, 0.028668]],
      ['cylinder', 50, [0.989264, 0.523643, 0.099444, 0.00618]],
      ['sphere', 0.5, [0.998364, 0.868713, 0.580044, 0.294078]],
      ['sphere', 5, [0.988399, 0.472248, 0.065675, 0.002414]],
      ['sphere', 50, [0.971267, 0.298804, 0.017451, 0.000153]],
    ];
    for (const [body, biot, wanted] of rows) {
      for (const [index, fourier] of [0.05, 0.2, 0.5, 1].entries()) {
        expect(theta(body, biot, fourier)).toBeCloseTo(wanted[index] ?? Number.NaN, 6);
      }
    }
  });
});

describe('the judge', () => {
  it.each(BODIES)('follows the series of a %s within 0.1 °C of an 80 °C step', (body, coordinates, edges) => {
    for (const biot of BIOTS) {
      const box = stepProblem(coordinates, edges, [1], biot);
      for (const fourier of FOURIERS) {
        box.runTo((fourier * HALF * HALF) / ALPHA);
        const got = middleC(box.tempC(0), box.tempC(1));
        expect(Math.abs(got - START * theta(body, biot, fourier))).toBeLessThan(0.1);
      }
    }
  });

  it('follows the product series of a brick within 0.1 °C', () => {
    const halves = [0.06, 0.05, HALF] as const;
    const edges = [even(0, halves[0], 12), even(0, halves[1], 12), even(0, halves[2], 12)] as const;
    for (const biot of BIOTS) {
      const box = stepProblem('cartesian', edges, [1, 3, 5], biot);
      for (const fourier of [0.05, 0.2, 0.5]) {
        box.runTo((fourier * HALF * HALF) / ALPHA);
        const wanted = halves.reduce(
          (product, half) => product * theta('slab', (biot * half) / HALF, fourier * (HALF / half) ** 2),
          START,
        );
        expect(Math.abs(middleOf(box) - wanted)).toBeLessThan(0.1);
      }
    }
  });

  it('follows the product series of a short cylinder within 0.1 °C', () => {
    const edges = [even(0, HALF, 20), [0, 1], even(0, 0.05, 16)] as const;
    for (const biot of BIOTS) {
      const box = stepProblem('cylindrical', edges, [1, 5], biot);
      for (const fourier of [0.05, 0.2, 0.5]) {
        box.runTo((fourier * HALF * HALF) / ALPHA);
        const wanted =
          START *
          theta('cylinder', biot, fourier) *
          theta('slab', (biot * 0.05) / HALF, fourier * (HALF / 0.05) ** 2);
        const ring = (i: number) => middleC(box.tempC(box.index(i, 0, 0)), box.tempC(box.index(i, 0, 1)));
        expect(Math.abs(middleC(ring(0), ring(1)) - wanted)).toBeLessThan(0.1);
      }
    }
  });

  it('keeps every joule: heat through the faces is the rise of the heat content', () => {
    const box = stepProblem(
      'cylindrical',
      [even(0, HALF, 10), even(0, Math.PI, 4), even(0, 0.05, 6)],
      [1, 5],
      5,
    );
    const before = box.heatContent();
    box.runTo(1800);
    expect(box.heatIn() / (box.heatContent() - before)).toBeCloseTo(1, 10);
  });

  it('is of second order: half the cell, a quarter of the error', () => {
    const errorOf = (cells: number) => {
      const box = stepProblem('cartesian', [even(0, HALF, cells), [0, 1], [0, 1]], [1], 5);
      box.runTo((0.5 * HALF * HALF) / ALPHA);
      return middleC(box.tempC(0), box.tempC(1)) - START * theta('slab', 5, 0.5);
    };
    expect(Math.log2(errorOf(8) / errorOf(16))).toBeCloseTo(2, 1);
  });
});

/** The middle of a box whose first three faces are planes of symmetry, read as in `middleC` along each axis. */
function middleOf(box: ReturnType<typeof judge>): number {
  let sum = 0;
  for (const i of [0, 1]) {
    for (const j of [0, 1]) {
      for (const k of [0, 1]) {
        const weight = [i, j, k].reduce((product, at) => product * (at === 0 ? 9 / 8 : -1 / 8), 1);
        sum += weight * box.tempC(box.index(i, j, k));
      }
    }
  }
  return sum;
}

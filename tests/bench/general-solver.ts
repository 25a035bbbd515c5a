import { constantMaterial, simulate } from '@larderwright/calc/heat';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { valueAt } from '../calc/heat/curve.ts';
import { BRICK, COOKS } from '../calc/heat/references.ts';
import { type Entry, processorMs } from './registry.ts';

/** The brick N01: k 0.45 W/(m·K), ρ 1050 kg/m³, cp 3500 J/(kg·K), film 300 W/(m²·K), 4 °C into 85 °C. */
const K = 0.45;
const HEAT_J_M3 = 1050 * 3500;
const FILM = 300;
const [START_C, BATH_C] = [4, 85];
const HALVES_M = [0.12, 0.05, 0.0375] as const;
const STEP_S = 60;

/**
 * An eighth of the brick as finite volumes, solved by Crank–Nicolson with a dense Cholesky factor of a
 * general-purpose library of linear algebra. Four half steps of backward Euler smooth the start (Rannacher);
 * they have the same matrix. Returns the core, °C, every step.
 */
function byLibrary(cells: readonly [number, number, number]): { timesMin: number[]; coreC: number[] } {
  const [nx, ny, nz] = cells;
  const count = nx * ny * nz;
  const size = HALVES_M.map((half, axis) => half / (cells[axis] ?? 1));
  const volume = size.reduce((product, value) => product * value, 1);
  const strides = [1, nx, nx * ny];
  const flow = Matrix.zeros(count, count);
  const add = (row: number, column: number, value: number) =>
    flow.set(row, column, flow.get(row, column) + value);
  for (let cell = 0; cell < count; cell++) {
    const place = [cell % nx, Math.floor(cell / nx) % ny, Math.floor(cell / (nx * ny))];
    for (const [axis, width] of size.entries()) {
      const area = volume / width;
      if ((place[axis] ?? 0) + 1 < (cells[axis] ?? 0)) {
        const next = cell + (strides[axis] ?? 1);
        const passed = (area * K) / width;
        add(cell, cell, passed);
        add(next, next, passed);
        add(cell, next, -passed);
        add(next, cell, -passed);
      } else {
        add(cell, cell, area / (width / 2 / K + 1 / FILM));
      }
    }
  }
  const held = Matrix.eye(count, count, volume * HEAT_J_M3);
  const half = Matrix.mul(flow, STEP_S / 2);
  const factor = new CholeskyDecomposition(Matrix.add(held, half));
  const explicit = Matrix.sub(held, half);
  // Above the bath's temperature nothing drives the flow.
  let state = Matrix.ones(count, 1).mul(START_C - BATH_C);
  const timesMin = [0];
  const coreC = [START_C];
  for (let step = 1; step <= (120 * 60) / STEP_S; step++) {
    if (step <= 2) {
      for (let part = 0; part < 2; part++) state = factor.solve(held.mmul(state));
    } else state = factor.solve(explicit.mmul(state));
    timesMin.push((step * STEP_S) / 60);
    coreC.push(BATH_C + middle(state, strides));
  }
  return { timesMin, coreC };
}

/** The middle itself from the two cells beside it along each axis: the slope there is nil. */
function middle(state: Matrix, strides: readonly number[]): number {
  let sum = 0;
  for (let corner = 0; corner < 8; corner++) {
    let [weight, cell] = [1, 0];
    for (const [axis, stride] of strides.entries()) {
      const beyond = (corner >> axis) & 1;
      weight *= beyond ? -1 / 8 : 9 / 8;
      cell += beyond * stride;
    }
    sum += weight * state.get(cell, 0);
  }
  return sum;
}

/** Largest error of a core curve at the minutes of the reference, °C. */
function worst(timesMin: Float64Array, coreC: Float64Array): number {
  const wanted = COOKS.find(({ id }) => id === 'N01')?.core ?? {};
  return Math.max(
    ...Object.entries(wanted).map(([minute, value]) =>
      Math.abs(valueAt(timesMin, coreC, Number(minute)) - value),
    ),
  );
}

function byUs(): number {
  const batch = { shape: BRICK, material: constantMaterial(K, 1050, 3500), startC: START_C };
  const air = { tempC: BATH_C, filmWm2K: FILM };
  const run = simulate(batch, [{ kind: 'bath', end: { when: 'time', minutes: 120 }, air }]);
  return run === null ? Number.NaN : worst(run.timesMin, run.coreC);
}

const CELLS = [6, 8, 8] as const;

/** The same brick for two hours by both, in one run: how far each is off the closed series, and the ratio of the times. */
export function againstGeneralSolver(): Entry[] {
  const library = () => {
    const { timesMin, coreC } = byLibrary(CELLS);
    return worst(Float64Array.from(timesMin), Float64Array.from(coreC));
  };
  const case2h = 'brick of 240 × 100 × 75 mm, 2 h';
  return [
    { name: `${case2h}: error, exact tier`, unit: '°C', runs: 1, measure: byUs },
    {
      name: `${case2h}: error, linear algebra`,
      unit: '°C',
      runs: 1,
      measure: library,
      note: () => `ml-matrix, Crank–Nicolson, ${CELLS.join(' × ')} cells of an eighth`,
    },
    { name: `${case2h}: exact tier`, unit: 'ms', measure: () => processorMs(byUs) },
    {
      name: `${case2h}: linear algebra over exact tier`,
      unit: '×',
      runs: 5,
      measure: () => processorMs(library) / processorMs(byUs),
    },
  ];
}

/**
 * The judge: a plain finite-volume solver in three orthogonal co-ordinates, slow and short enough to be
 * read through. Cell-centred, enthalpy as the state, Heun's rule at half the stable step. It shares no
 * line with the solver it judges. SI units, °C.
 */
export type Coordinates = 'cartesian' | 'cylindrical' | 'spherical';

export interface JudgeMaterial {
  readonly conductivity: (tempC: number) => number;
  /** J/m³ of a temperature. */
  readonly enthalpy: (tempC: number) => number;
  /** °C of an enthalpy per volume. */
  readonly temperature: (enthalpy: number) => number;
  /** Largest diffusivity it can have, m²/s: sets the step. */
  readonly fastest: number;
}

/** What lies outside a face of the box at a time in s: film coefficient, W/(m²·K), and temperature. */
export interface Outside {
  readonly film: number;
  readonly tempC: number;
}

/** Faces in the order −1st, +1st, −2nd, +2nd, −3rd, +3rd co-ordinate. Null: no heat passes. */
export type FaceIndex = 0 | 1 | 2 | 3 | 4 | 5;

export interface JudgeProblem {
  readonly coordinates: Coordinates;
  /** Cell edges along each co-ordinate: x, y, z or r, φ, z or r, θ, φ. */
  readonly edges: readonly [readonly number[], readonly number[], readonly number[]];
  readonly materialAt: (first: number, second: number, third: number) => JudgeMaterial;
  readonly startC: number;
  /** Given the middle of the outer face of a cell. */
  readonly outside: (face: FaceIndex, at: readonly [number, number, number], timeS: number) => Outside | null;
}

/** A constant material. */
export function plain(conductivity: number, density: number, heat: number): JudgeMaterial {
  return {
    conductivity: () => conductivity,
    enthalpy: (tempC) => density * heat * tempC,
    temperature: (enthalpy) => enthalpy / (density * heat),
    fastest: conductivity / (density * heat),
  };
}

/** Even edges from `from` to `to`. */
export function even(from: number, to: number, cells: number): number[] {
  return Array.from({ length: cells + 1 }, (_, i) => from + ((to - from) * i) / cells);
}

/** Volume and face areas of a cell, and the length of a unit of each co-ordinate at its middle. */
function geometry(kind: Coordinates, low: readonly number[], high: readonly number[]) {
  const [a0 = 0, b0 = 0, c0 = 0] = low;
  const [a1 = 0, b1 = 0, c1 = 0] = high;
  const [a, b, c] = [a1 - a0, b1 - b0, c1 - c0];
  const r = (a0 + a1) / 2;
  if (kind === 'cartesian')
    return { volume: a * b * c, areas: [b * c, b * c, a * c, a * c, a * b, a * b], scale: [1, 1, 1] };
  if (kind === 'cylindrical') {
    const sector = ((a1 * a1 - a0 * a0) / 2) * b;
    return {
      volume: sector * c,
      areas: [a0 * b * c, a1 * b * c, a * c, a * c, sector, sector],
      scale: [1, r, 1],
    };
  }
  const shell = (a1 ** 3 - a0 ** 3) / 3;
  const cap = Math.cos(b0) - Math.cos(b1);
  const ring = (a1 * a1 - a0 * a0) / 2;
  return {
    volume: shell * cap * c,
    areas: [
      a0 * a0 * cap * c,
      a1 * a1 * cap * c,
      ring * Math.sin(b0) * c,
      ring * Math.sin(b1) * c,
      ring * b,
      ring * b,
    ],
    scale: [1, r, r * Math.sin((b0 + b1) / 2)],
  };
}

interface Cell {
  readonly volume: number;
  readonly middle: readonly [number, number, number];
  readonly material: JudgeMaterial;
  /** Per face: area, distance from the middle to the face, neighbour or −1. */
  readonly faces: readonly { area: number; reach: number; next: number }[];
}

export interface Judge {
  readonly cells: readonly Cell[];
  readonly timeS: () => number;
  /** Heat that has come in through the outer faces, J. */
  readonly heatIn: () => number;
  readonly heatContent: () => number;
  readonly tempC: (cell: number) => number;
  readonly index: (first: number, second: number, third: number) => number;
  readonly meanC: () => number;
  /** Replaces what lies outside, the field staying as it is. */
  readonly surround: (outside: JudgeProblem['outside']) => void;
  readonly runTo: (timeS: number) => void;
}

export function judge(problem: JudgeProblem): Judge {
  const [na, nb, nc] = problem.edges.map((edges) => edges.length - 1) as [number, number, number];
  const index = (i: number, j: number, k: number) => i + na * (j + nb * k);
  const cells: Cell[] = [];
  for (let k = 0; k < nc; k++)
    for (let j = 0; j < nb; j++) for (let i = 0; i < na; i++) cells.push(cellAt(i, j, k));

  function cellAt(i: number, j: number, k: number): Cell {
    const place = [i, j, k];
    const low = problem.edges.map((edges, axis) => edges[place[axis] ?? 0] ?? 0);
    const high = problem.edges.map((edges, axis) => edges[(place[axis] ?? 0) + 1] ?? 0);
    const middle = low.map((value, axis) => (value + (high[axis] ?? 0)) / 2) as [number, number, number];
    const { volume, areas, scale } = geometry(problem.coordinates, low, high);
    const counts = [na, nb, nc];
    const faces = [0, 1, 2, 3, 4, 5].map((face) => {
      const axis = face >> 1;
      const step = face % 2 === 0 ? -1 : 1;
      const neighbour = [...place];
      neighbour[axis] = (place[axis] ?? 0) + step;
      const inside = (neighbour[axis] ?? 0) >= 0 && (neighbour[axis] ?? 0) < (counts[axis] ?? 0);
      return {
        area: areas[face] ?? 0,
        reach: (((high[axis] ?? 0) - (low[axis] ?? 0)) / 2) * (scale[axis] ?? 1),
        next: inside ? index(neighbour[0] ?? 0, neighbour[1] ?? 0, neighbour[2] ?? 0) : -1,
      };
    });
    return { volume, middle, material: problem.materialAt(...middle), faces };
  }

  let outside = problem.outside;
  let time = 0;
  let heatIn = 0;
  let state = Float64Array.from(cells, ({ material }) => material.enthalpy(problem.startC));
  const tempOf = (values: Float64Array, cell: number) =>
    (cells[cell] as Cell).material.temperature(values[cell] ?? 0);

  /** Heat into every cell, W, and through the outer faces, W. */
  function flow(values: Float64Array, timeS: number) {
    const temps = Float64Array.from(cells, (_, cell) => tempOf(values, cell));
    const into = new Float64Array(cells.length);
    let through = 0;
    for (const [own, { material, faces, middle }] of cells.entries()) {
      const t = temps[own] ?? 0;
      for (const [face, { area, reach, next }] of faces.entries()) {
        if (area === 0) continue;
        const resistance = reach / material.conductivity(t);
        if (next > own) {
          const other = cells[next] as Cell;
          const across = other.faces[face ^ 1]?.reach ?? 0;
          const u = temps[next] ?? 0;
          const heat = (area * (u - t)) / (resistance + across / other.material.conductivity(u));
          into[own] = (into[own] ?? 0) + heat;
          into[next] = (into[next] ?? 0) - heat;
        } else if (next < 0) {
          const beyond = outside(face as FaceIndex, middle, timeS);
          if (beyond === null) continue;
          const heat = (area * (beyond.tempC - t)) / (resistance + 1 / beyond.film);
          into[own] = (into[own] ?? 0) + heat;
          through += heat;
        }
      }
    }
    return { into, through };
  }

  /** The step is set by the fastest cell: half of what the explicit rule allows. */
  function stableStep(): number {
    let fastest = 0;
    for (const { volume, material, faces } of cells) {
      const rate = faces.reduce((sum, { area, reach, next }) => {
        return sum + (area * material.fastest) / ((next < 0 ? reach : 2 * reach) * volume);
      }, 0);
      fastest = Math.max(fastest, rate);
    }
    return 0.5 / fastest;
  }
  const longest = stableStep();

  function step(dt: number) {
    const first = flow(state, time);
    const guess = state.map(
      (value, cell) => value + ((first.into[cell] ?? 0) * dt) / (cells[cell] as Cell).volume,
    );
    const second = flow(guess, time + dt);
    state = state.map(
      (value, cell) =>
        value +
        (((first.into[cell] ?? 0) + (second.into[cell] ?? 0)) * dt) / 2 / (cells[cell] as Cell).volume,
    );
    heatIn += ((first.through + second.through) * dt) / 2;
    time += dt;
  }

  return {
    cells,
    index,
    timeS: () => time,
    heatIn: () => heatIn,
    heatContent: () => cells.reduce((sum, { volume }, cell) => sum + volume * (state[cell] ?? 0), 0),
    tempC: (cell) => tempOf(state, cell),
    meanC: () =>
      cells.reduce((sum, { volume }, cell) => sum + volume * tempOf(state, cell), 0) /
      cells.reduce((sum, { volume }) => sum + volume, 0),
    surround: (next) => {
      outside = next;
    },
    runTo: (end) => {
      while (time < end - 1e-9) step(Math.min(longest, end - time));
    },
  };
}

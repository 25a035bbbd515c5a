import type { Material } from './material.ts';

/**
 * A material read backwards: temperature and Kirchhoff potential against enthalpy per volume, on an even
 * grid of enthalpy. Values between grid points are straight lines.
 */
export interface EnthalpyTable {
  /** Enthalpy of the first point, J/m³. */
  readonly first: number;
  /** Points per J/m³. */
  readonly density: number;
  /** Index of the last interval. */
  readonly last: number;
  /** °C at each point. */
  readonly tempC: Float64Array;
  /** ∫ k dT from the first point, W/m, at each point. */
  readonly kirchhoff: Float64Array;
}

const LOW_C = -42;
const HIGH_C = 180;
const POINTS = 4096;

const tables = new WeakMap<Material, EnthalpyTable>();

/** Tabulates a material over −42…180 °C. The same material object is tabulated once. */
export function enthalpyTable(material: Material): EnthalpyTable {
  const known = tables.get(material);
  if (known !== undefined) return known;
  const table = tabulate(material);
  tables.set(material, table);
  return table;
}

function tabulate(material: Material): EnthalpyTable {
  const grid = temperatureGrid(material.cornersC);
  const enthalpy = grid.map((tempC) => material.densityKgM3 * material.enthalpyJkg(tempC));
  const conductivity = grid.map((tempC) => material.conductivityWmK(tempC));
  const potential = new Float64Array(grid.length);
  for (let i = 1; i < grid.length; i++) {
    const step = at(grid, i) - at(grid, i - 1);
    potential[i] = at(potential, i - 1) + (step * (at(conductivity, i) + at(conductivity, i - 1))) / 2;
  }
  const first = at(enthalpy, 0);
  const step = (at(enthalpy, grid.length - 1) - first) / (POINTS - 1);
  const tempC = new Float64Array(POINTS);
  const kirchhoff = new Float64Array(POINTS);
  let below = 0;
  for (let i = 0; i < POINTS; i++) {
    const wanted = first + step * i;
    while (below < grid.length - 2 && at(enthalpy, below + 1) < wanted) below++;
    const span = at(enthalpy, below + 1) - at(enthalpy, below);
    const share = span > 0 ? (wanted - at(enthalpy, below)) / span : 0;
    tempC[i] = at(grid, below) + share * (at(grid, below + 1) - at(grid, below));
    kirchhoff[i] = at(potential, below) + share * (at(potential, below + 1) - at(potential, below));
  }
  return { first, density: 1 / step, last: POINTS - 2, tempC, kirchhoff };
}

/** Enthalpy per volume, J/m³, of a temperature, by the table itself, so that both ways agree. */
export function enthalpyOf(table: EnthalpyTable, tempC: number): number {
  let low = 0;
  let high = table.last + 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (at(table.tempC, middle) <= tempC) low = middle;
    else high = middle;
  }
  const from = at(table.tempC, low);
  const span = at(table.tempC, low + 1) - from;
  return table.first + (low + (tempC - from) / span) / table.density;
}

/** Temperature, °C, of an enthalpy per volume, J/m³. */
export function temperatureOf(table: EnthalpyTable, enthalpy: number): number {
  const place = (enthalpy - table.first) * table.density;
  const index = Math.min(Math.max(Math.floor(place), 0), table.last);
  const from = at(table.tempC, index);
  return from + (place - index) * (at(table.tempC, index + 1) - from);
}

/** Steps of the temperature grid, °C: close below a corner, where latent heat bends the curve, wide above. */
const CLOSE = { withinC: 3, stepC: 0.02 };
const FROZEN_STEP_C = 0.1;
const STEP_C = 0.5;

function temperatureGrid(cornersC: readonly number[]): number[] {
  const inside = cornersC.filter((corner) => corner > LOW_C && corner < HIGH_C);
  const highest = Math.max(LOW_C, ...inside);
  const stepBelow = (tempC: number) => {
    const gaps = inside.map((corner) => corner - tempC).filter((gap) => gap > 0);
    if (gaps.length === 0) return STEP_C;
    const gap = Math.min(...gaps);
    return Math.min(gap, gap < CLOSE.withinC ? CLOSE.stepC : FROZEN_STEP_C);
  };
  const grid: number[] = [];
  for (let tempC = LOW_C; tempC < HIGH_C; ) {
    grid.push(tempC);
    const next = tempC + stepBelow(tempC);
    tempC = tempC < highest && next > highest - 1e-6 ? highest : next;
  }
  return [...grid, HIGH_C];
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}

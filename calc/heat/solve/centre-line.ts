import type { Solid } from '../mesh/index.ts';
import { type EnthalpyTable, temperatureOf } from '../properties/index.ts';
import { blend, type Pair } from './nets.ts';
import type { Network } from './network.ts';

/** A temperature and where it is: height over the base, m. */
export interface Spot {
  readonly tempC: number;
  readonly heightM: number;
}

/** Temperatures along the upright middle line, °C, from the base up. */
export function axisTemperatures(
  { axisNodes }: Solid,
  table: EnthalpyTable,
  state: Float64Array,
): Float64Array {
  const tempsC = new Float64Array(axisNodes.length);
  for (let i = 0; i < tempsC.length; i++) tempsC[i] = temperatureOf(table, at(state, at(axisNodes, i)));
  return tempsC;
}

/** The coldest or hottest spot of a line, by the parabola through the extreme node and its neighbours. */
export function extremeOnAxis(
  heights: Float64Array,
  tempsC: Float64Array,
  which: 'coldest' | 'hottest',
): Spot {
  const sign = which === 'coldest' ? 1 : -1;
  let best = 0;
  for (let i = 1; i < tempsC.length; i++) {
    if (sign * at(tempsC, i) < sign * at(tempsC, best)) best = i;
  }
  if (best === 0 || best === tempsC.length - 1)
    return { tempC: at(tempsC, best), heightM: at(heights, best) };
  return vertex(heights, tempsC, best);
}

/** The coldest or hottest spot of the middle line, blended from both nets. */
export function coreOf(
  nets: Pair<Network>,
  table: EnthalpyTable,
  states: Pair<Float64Array>,
  which: 'coldest' | 'hottest',
): Spot {
  const spot = (net: 'fine' | 'coarse') => {
    const { solid } = nets[net];
    return extremeOnAxis(solid.axisHeights, axisTemperatures(solid, table, states[net]), which);
  };
  const [fine, coarse] = [spot('fine'), spot('coarse')];
  return { tempC: blend({ fine: fine.tempC, coarse: coarse.tempC }), heightM: fine.heightM };
}

/** Temperature at a height of the line, by the parabola through the three nearest nodes. */
export function atHeight(heights: Float64Array, tempsC: Float64Array, heightM: number): number {
  let middle = 1;
  for (let i = 2; i < heights.length - 1; i++) {
    if (Math.abs(at(heights, i) - heightM) < Math.abs(at(heights, middle) - heightM)) middle = i;
  }
  const { first, second, origin, base } = parabola(heights, tempsC, middle);
  const d = heightM - origin;
  return base + d * (first + d * second);
}

/** T = base + first d + second d², d from the middle node. */
function parabola(heights: Float64Array, tempsC: Float64Array, middle: number) {
  const origin = at(heights, middle);
  const base = at(tempsC, middle);
  const [below, above] = [at(heights, middle - 1) - origin, at(heights, middle + 1) - origin];
  const [low, high] = [(at(tempsC, middle - 1) - base) / below, (at(tempsC, middle + 1) - base) / above];
  const second = (high - low) / (above - below);
  return { origin, base, second, first: low - second * below };
}

function vertex(heights: Float64Array, tempsC: Float64Array, middle: number): Spot {
  const { origin, base, first, second } = parabola(heights, tempsC, middle);
  if (second === 0) return { tempC: base, heightM: origin };
  const d = -first / (2 * second);
  return { tempC: base + d * (first + d * second), heightM: origin + d };
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}

import type { EnthalpyTable } from '../properties/index.ts';
import type { Surroundings } from './around.ts';
import type { Chain } from './chains.ts';
import type { Frame } from './frame.ts';

/** Bounds of how fast a network answers. */
export interface Rates {
  /** K per J/m³ at an enthalpy. */
  readonly slopeAt: (enthalpy: number) => number;
  /** An upper bound of the fastest rate, 1/s, about a state. */
  readonly fastest: (state: Float64Array) => number;
}

const BATH_NUDGE_C = 0.02;
/** About 1 °C of unfrozen food, J/m³. */
const MARGIN_J_M3 = 3.6e6;

/**
 * `chains` are those marched explicitly; `carried` is what each food node holds besides the food, J/K; `latestS` tells the time
 * of the last evaluation.
 */
export function ratesOf(
  { network, shapeSum, fastestShape, surface }: Frame,
  { first, density, last, tempC: tableC, kirchhoff }: EnthalpyTable,
  { exchanges, steady, bathRate, carried }: Surroundings & { readonly carried: Float64Array },
  offset: number,
  chains: readonly Chain[],
  latestS: () => number,
): Rates {
  const { foodCount, shellCount, shellCapacity, linkA, linkB, linkConductance } = network;
  const { volumeM3 } = network.solid;
  const bathIndex = offset + foodCount + shellCount;
  const outer = outerConductances();
  let shell = 0;
  for (let i = 0; i < shellCount; i++) {
    shell = Math.max(shell, (outer[foodCount + i] as number) / (shellCapacity[i] as number));
  }

  /** Conductances to shell and outside that meet at each node, those between nodes counted twice, W/K. */
  function outerConductances(): Float64Array {
    const sums = new Float64Array(foodCount + shellCount);
    const add = (node: number, conductance: number) => {
      sums[node] = (sums[node] as number) + conductance;
    };
    for (const { node, conductance } of exchanges) add(node, conductance);
    for (const { food, inward } of steady?.rings ?? []) {
      for (const [i, node] of food.entries()) add(node, inward[i] as number);
    }
    for (const [link, a] of linkA.entries()) {
      for (const node of [a, linkB[link] as number]) add(node, 2 * (linkConductance[link] as number));
    }
    for (const { nodes, conductance } of chains) {
      for (const [i, own] of conductance.entries()) {
        for (const node of [nodes[i] as number, nodes[i + 1] as number]) add(node, 2 * own);
      }
    }
    return sums;
  }

  function slopeAt(enthalpy: number): number {
    const place = (enthalpy - first) * density;
    const index = place < 0 ? 0 : place > last ? last : place | 0;
    return ((tableC[index + 1] as number) - (tableC[index] as number)) * density;
  }

  function fastest(state: Float64Array): number {
    let coldest = Number.POSITIVE_INFINITY;
    let hottest = Number.NEGATIVE_INFINITY;
    for (let i = offset; i < offset + foodCount; i++) {
      const enthalpy = state[i] as number;
      if (enthalpy < coldest) coldest = enthalpy;
      if (enthalpy > hottest) hottest = enthalpy;
    }
    const diffusivity = fastestDiffusivity(coldest, hottest);
    let rate = Math.max(shell, diffusivity * fastestShape, bathAnswer(state[bathIndex] as number));
    for (let s = 0; s < surface.length; s++) {
      const i = surface[s] as number;
      const slope = slopeAt(state[offset + i] as number);
      const held = (volumeM3[i] as number) + (carried[i] as number) * slope;
      const own = (2 * diffusivity * (shapeSum[i] as number) + slope * (outer[i] as number)) / held;
      if (own > rate) rate = own;
    }
    return rate;
  }

  /** How fast the bath answers to a change of itself, 1/s: near the boil, very. */
  function bathAnswer(bathC: number): number {
    if (bathRate === null) return 0;
    const [below, above] = [
      bathRate(latestS(), bathC - BATH_NUDGE_C, 0),
      bathRate(latestS(), bathC + BATH_NUDGE_C, 0),
    ];
    return Math.abs(above - below) / (2 * BATH_NUDGE_C);
  }

  /** Largest slope of the potential between two enthalpies, with a margin for what a step may add. */
  function fastestDiffusivity(coldest: number, hottest: number): number {
    const margin = 2 * MARGIN_J_M3;
    let most = 0;
    for (let k = 0; k <= 16; k++) {
      const enthalpy = coldest - margin + ((hottest - coldest + 2 * margin) * k) / 16;
      const place = (enthalpy - first) * density;
      const index = place < 0 ? 0 : place > last ? last : place | 0;
      const slope = ((kirchhoff[index + 1] as number) - (kirchhoff[index] as number)) * density;
      if (slope > most) most = slope;
    }
    return most;
  }

  return { slopeAt, fastest };
}

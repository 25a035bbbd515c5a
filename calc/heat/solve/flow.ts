import type { EnthalpyTable } from '../properties/index.ts';
import type { Frame } from './frame.ts';
import { type Spreading, spreadingOf } from './spreading.ts';

/** Heat exchange of one contact with one medium. */
export interface Exchange {
  readonly node: number;
  readonly medium: number;
  /** W/K. */
  readonly conductance: number;
}

/** What surrounds the body: temperatures of the media, one of which may be a bath with a heat balance. */
export interface Surroundings {
  readonly exchanges: readonly Exchange[];
  /** Writes the temperature of every medium, °C, at a time in s. `bathC` is the state of the bath. */
  readonly media: (timeS: number, bathC: number, into: Float64Array) => void;
  /** K/s of the bath at a time, its temperature and the heat it gives the whole body, W. Null: no such bath. */
  readonly bathRate: ((timeS: number, bathC: number, loadW: number) => number) | null;
  /** Which medium the bath is. */
  readonly bathMedium: number;
}

/**
 * Right-hand side of the heat balance of a network. State vector: enthalpy of each food node, J/m³;
 * temperature of each shell node, °C; temperature of the bath, °C; heat taken in by this part, J.
 */
export interface Flow {
  readonly size: number;
  readonly derivative: (timeS: number, state: Float64Array, into: Float64Array) => void;
  /** An upper bound of the fastest rate, 1/s, about a state. */
  readonly fastestRate: (state: Float64Array) => number;
  /** The part to be solved for in each stage; its rate is not within `fastestRate`. Null: none. */
  readonly spreading: Spreading | null;
}

/** `as number` below: the loops stay within arrays whose lengths are fixed above them. */
export function flowOf(
  { network, ...frame }: Frame,
  table: EnthalpyTable,
  { exchanges, media, bathRate, bathMedium }: Surroundings,
): Flow {
  const {
    solid,
    foodCount,
    shellCount,
    extraCapacity,
    shellCapacity,
    linkA,
    linkB,
    linkConductance,
    chains,
  } = network;
  const { section, perLayer, layers, layerThickness, layerPlace, volumeM3, copies } = solid;
  const nodes = foodCount + shellCount;
  const bathIndex = nodes;
  const heatIndex = nodes + 1;
  const { edgeA, edgeB } = section;
  const edgeCount = edgeA.length;
  const { edgeGeometry, alongGeometry, inverseVolume, shapeSum, fastestShape, surface } = frame;

  const exchangeNode = Int32Array.from(exchanges, ({ node }) => node);
  const exchangeMedium = Int32Array.from(exchanges, ({ medium }) => medium);
  const exchangeConductance = Float64Array.from(exchanges, ({ conductance }) => conductance);
  const mediaC = new Float64Array(1 + Math.max(0, ...exchangeMedium));
  /** m³ of food, and of food that would hold the heat of the metal on it, at each surface node. */
  const held = new Float64Array(surface.length);
  const potential = new Float64Array(foodCount);
  const heat = new Float64Array(nodes);
  const tempC = new Float64Array(nodes);
  const { first, density, last, tempC: tableC, kirchhoff } = table;

  let latestS = 0;

  function derivative(timeS: number, state: Float64Array, into: Float64Array): void {
    latestS = timeS;
    for (let i = 0; i < foodCount; i++) {
      const place = ((state[i] as number) - first) * density;
      const index = place < 0 ? 0 : place > last ? last : place | 0;
      const low = kirchhoff[index] as number;
      potential[i] = low + (place - index) * ((kirchhoff[index + 1] as number) - low);
    }
    heat.fill(0);
    for (let layer = 0; layer < layers; layer++) {
      const base = layer * perLayer;
      const thick = layerThickness[layer] as number;
      for (let edge = 0; edge < edgeCount; edge++) {
        const a = base + (edgeA[edge] as number);
        const b = base + (edgeB[edge] as number);
        const passed =
          thick * (edgeGeometry[edge] as number) * ((potential[a] as number) - (potential[b] as number));
        heat[a] = (heat[a] as number) - passed;
        heat[b] = (heat[b] as number) + passed;
      }
    }
    for (let layer = 1; layer < layers; layer++) {
      const base = layer * perLayer;
      const inverseGap = 1 / ((layerPlace[layer] as number) - (layerPlace[layer - 1] as number));
      for (let i = 0; i < perLayer; i++) {
        const a = base - perLayer + i;
        const b = base + i;
        const passed =
          inverseGap * (alongGeometry[i] as number) * ((potential[a] as number) - (potential[b] as number));
        heat[a] = (heat[a] as number) - passed;
        heat[b] = (heat[b] as number) + passed;
      }
    }
    for (let s = 0; s < surface.length; s++) {
      const i = surface[s] as number;
      const place = ((state[i] as number) - first) * density;
      const index = place < 0 ? 0 : place > last ? last : place | 0;
      const low = tableC[index] as number;
      const rise = (tableC[index + 1] as number) - low;
      tempC[i] = low + (place - index) * rise;
      held[s] = (volumeM3[i] as number) + (extraCapacity[i] as number) * rise * density;
    }
    for (let i = foodCount; i < nodes; i++) tempC[i] = state[i] as number;
    for (let link = 0; link < linkA.length; link++) {
      const a = linkA[link] as number;
      const b = linkB[link] as number;
      const passed = (linkConductance[link] as number) * ((tempC[a] as number) - (tempC[b] as number));
      heat[a] = (heat[a] as number) - passed;
      heat[b] = (heat[b] as number) + passed;
    }
    for (const { nodes: along, conductance } of chains) {
      for (let i = 0; i < conductance.length; i++) {
        const a = along[i] as number;
        const b = along[i + 1] as number;
        const passed = (conductance[i] as number) * ((tempC[a] as number) - (tempC[b] as number));
        heat[a] = (heat[a] as number) - passed;
        heat[b] = (heat[b] as number) + passed;
      }
    }
    media(timeS, state[bathIndex] as number, mediaC);
    let gained = 0;
    let fromBath = 0;
    for (let e = 0; e < exchangeNode.length; e++) {
      const node = exchangeNode[e] as number;
      const medium = exchangeMedium[e] as number;
      const passed =
        (exchangeConductance[e] as number) * ((mediaC[medium] as number) - (tempC[node] as number));
      heat[node] = (heat[node] as number) + passed;
      gained += passed;
      if (medium === bathMedium) fromBath += passed;
    }
    for (let i = 0; i < foodCount; i++) into[i] = (heat[i] as number) * (inverseVolume[i] as number);
    for (let s = 0; s < surface.length; s++) {
      const i = surface[s] as number;
      into[i] = (heat[i] as number) / (held[s] as number);
    }
    for (let i = 0; i < shellCount; i++)
      into[foodCount + i] = (heat[foodCount + i] as number) / (shellCapacity[i] as number);
    into[bathIndex] = bathRate === null ? 0 : bathRate(timeS, state[bathIndex] as number, fromBath * copies);
    into[heatIndex] = gained;
  }

  /** K per J/m³ at an enthalpy. */
  function slopeAt(enthalpy: number): number {
    const place = (enthalpy - first) * density;
    const index = place < 0 ? 0 : place > last ? last : place | 0;
    return ((tableC[index + 1] as number) - (tableC[index] as number)) * density;
  }

  const bounds = outerBounds();

  /** Conductances to shell and outside that meet at each node, W/K, and the fastest shell node, 1/s. */
  function outerBounds() {
    const outer = new Float64Array(nodes);
    for (const [e, node] of exchangeNode.entries()) {
      outer[node] = (outer[node] as number) + (exchangeConductance[e] as number);
    }
    for (const [link, a] of linkA.entries()) {
      const b = linkB[link] as number;
      for (const node of [a, b])
        outer[node] = (outer[node] as number) + 2 * (linkConductance[link] as number);
    }
    let shell = 0;
    for (let i = 0; i < shellCount; i++) {
      shell = Math.max(shell, (outer[foodCount + i] as number) / (shellCapacity[i] as number));
    }
    return { outer, shell };
  }

  function fastestRate(state: Float64Array): number {
    let coldest = Number.POSITIVE_INFINITY;
    let hottest = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < foodCount; i++) {
      const enthalpy = state[i] as number;
      if (enthalpy < coldest) coldest = enthalpy;
      if (enthalpy > hottest) hottest = enthalpy;
    }
    const diffusivity = fastestDiffusivity(coldest, hottest);
    let rate = Math.max(bounds.shell, diffusivity * fastestShape, bathAnswer(state[bathIndex] as number));
    for (let s = 0; s < surface.length; s++) {
      const i = surface[s] as number;
      const slope = slopeAt(state[i] as number);
      const held = (volumeM3[i] as number) + (extraCapacity[i] as number) * slope;
      const own = (2 * diffusivity * (shapeSum[i] as number) + slope * (bounds.outer[i] as number)) / held;
      if (own > rate) rate = own;
    }
    return rate;
  }

  /** How fast the bath answers to a change of itself, 1/s: near the boil, very. */
  function bathAnswer(bathC: number): number {
    if (bathRate === null) return 0;
    const [below, above] = [
      bathRate(latestS, bathC - BATH_NUDGE_C, 0),
      bathRate(latestS, bathC + BATH_NUDGE_C, 0),
    ];
    return Math.abs(above - below) / (2 * BATH_NUDGE_C);
  }

  /** Largest slope of the potential between two enthalpies, with a margin for what a step may add. */
  function fastestDiffusivity(coldest: number, hottest: number): number {
    const margin = 2 * MARGIN_J_M3;
    let fastest = 0;
    for (let k = 0; k <= 16; k++) {
      const enthalpy = coldest - margin + ((hottest - coldest + 2 * margin) * k) / 16;
      const place = (enthalpy - first) * density;
      const index = place < 0 ? 0 : place > last ? last : place | 0;
      const slope = ((kirchhoff[index + 1] as number) - (kirchhoff[index] as number)) * density;
      if (slope > fastest) fastest = slope;
    }
    return fastest;
  }

  const spreading = spreadingOf(
    chains,
    (node, state) => (node < foodCount ? slopeAt(state[node] as number) : 1),
    (node, slope) =>
      node < foodCount
        ? (volumeM3[node] as number) / slope + (extraCapacity[node] as number)
        : (shellCapacity[node - foodCount] as number),
  );
  return { size: nodes + 2, derivative, fastestRate, spreading: chains.length > 0 ? spreading : null };
}

const BATH_NUDGE_C = 0.02;
/** About 1 °C of unfrozen food, J/m³. */
const MARGIN_J_M3 = 3.6e6;

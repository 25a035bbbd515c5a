import type { EnthalpyTable } from '../properties/index.ts';
import type { Surroundings } from './around.ts';
import { conduct } from './conduct.ts';
import { conductFive, FEW_LAYERS } from './conduct-five.ts';
import { conductSix, SMOOTH_LAYERS } from './conduct-six.ts';
import type { Frame } from './frame.ts';
import { type Rates, ratesOf } from './rates.ts';
import { type Spreading, spreadingOf } from './spreading.ts';
import { steadyHeatOf } from './steady-heat.ts';

/**
 * Right-hand side of the heat balance of a network, whose state begins at `offset` of the arrays given.
 * The state: enthalpy of each food node, J/m³; temperature of each shell node, °C; temperature of the
 * bath, °C; heat taken in by this part, J.
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
export function flowOf(frame: Frame, table: EnthalpyTable, around: Surroundings, offset: number): Flow {
  const { network, surface } = frame;
  const { solid, foodCount, shellCount, extraCapacity, shellCapacity } = network;
  const { linkA, linkB, linkConductance } = network;
  const { volumeM3, copies } = solid;
  const { media, bathRate, bathMedium } = around;
  const nodes = foodCount + shellCount;
  const bathIndex = offset + nodes;
  const heatIndex = bathIndex + 1;

  const exchangeNode = Int32Array.from(around.exchanges, ({ node }) => node);
  const exchangeMedium = Int32Array.from(around.exchanges, ({ medium }) => medium);
  const exchangeConductance = Float64Array.from(around.exchanges, ({ conductance }) => conductance);
  const { steady = null } = around;
  const mediaCount = (steady?.rings ?? []).reduce((most, ring) => Math.max(most, ring.media), 0);
  const mediaC = new Float64Array(Math.max(mediaCount, 1 + Math.max(0, ...exchangeMedium)));
  const steadyHeat = steady === null ? null : steadyHeatOf(around, mediaC.length);
  const carried = steady === null ? extraCapacity : extraCapacity.map((own, i) => own + at(steady.lump, i));
  /** m³ of food, and of food that would hold the heat of the metal on it, at each surface node. */
  const held = new Float64Array(surface.length);
  const potential = new Float64Array(foodCount);
  /** W into each surface and shell node from layers and media; °C of each. */
  const heat = new Float64Array(nodes);
  const tempC = new Float64Array(nodes);
  const { first, density, last, tempC: tableC } = table;
  const explicitChains = network.chains.filter(({ metal }) => !metal);
  const allChains = network.chains;

  const conductAll = solid.along.banded
    ? conduct
    : solid.layers === SMOOTH_LAYERS
      ? conductSix
      : solid.layers === FEW_LAYERS
        ? conductFive
        : conduct;

  let latestS = 0;

  function readSurface(state: Float64Array): void {
    for (let s = 0; s < surface.length; s++) {
      const i = surface[s] as number;
      const place = ((state[offset + i] as number) - first) * density;
      const index = place < 0 ? 0 : place > last ? last : place | 0;
      const low = tableC[index] as number;
      const rise = (tableC[index + 1] as number) - low;
      tempC[i] = low + (place - index) * rise;
      held[s] = (volumeM3[i] as number) + (carried[i] as number) * rise * density;
      heat[i] = 0;
    }
    for (let i = foodCount; i < nodes; i++) {
      tempC[i] = state[offset + i] as number;
      heat[i] = 0;
    }
  }

  function derivative(timeS: number, state: Float64Array, into: Float64Array): void {
    latestS = timeS;
    conductAll(frame, table, state, into, potential, offset);
    readSurface(state);
    for (let link = 0; link < linkA.length; link++) {
      const a = linkA[link] as number;
      const b = linkB[link] as number;
      const passed = (linkConductance[link] as number) * ((tempC[a] as number) - (tempC[b] as number));
      heat[a] = (heat[a] as number) - passed;
      heat[b] = (heat[b] as number) + passed;
    }
    for (let c = 0; c < allChains.length; c++) {
      const { nodes: along, conductance } = allChains[c] as (typeof allChains)[number];
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
    if (steadyHeat !== null) {
      steadyHeat.add(timeS, tempC, mediaC, heat);
      gained = steadyHeat.told.gained;
      fromBath = steadyHeat.told.fromBath;
    } else {
      for (let e = 0; e < exchangeNode.length; e++) {
        const node = exchangeNode[e] as number;
        const medium = exchangeMedium[e] as number;
        const passed =
          (exchangeConductance[e] as number) * ((mediaC[medium] as number) - (tempC[node] as number));
        heat[node] = (heat[node] as number) + passed;
        gained += passed;
        if (medium === bathMedium) fromBath += passed;
      }
    }
    const warming = bathRate === null ? 0 : bathRate(timeS, state[bathIndex] as number, fromBath * copies);
    if (steady !== null && warming !== 0) {
      const { bathCross } = steady;
      for (let s = 0; s < surface.length; s++) {
        const i = surface[s] as number;
        heat[i] = (heat[i] as number) - warming * (bathCross[i] as number);
      }
    }
    for (let s = 0; s < surface.length; s++) {
      const i = surface[s] as number;
      const conducted = (into[offset + i] as number) * (volumeM3[i] as number);
      into[offset + i] = (conducted + (heat[i] as number)) / (held[s] as number);
    }
    for (let i = 0; i < shellCount; i++)
      into[offset + foodCount + i] = (heat[foodCount + i] as number) / (shellCapacity[i] as number);
    into[bathIndex] = warming;
    into[heatIndex] = gained;
  }

  const rates: Rates = ratesOf(frame, table, { ...around, carried }, offset, explicitChains, () => latestS);
  const spreading = spreadingOf(
    network.chains.filter(({ metal }) => metal),
    offset,
    (node, state) => (node < foodCount ? rates.slopeAt(state[offset + node] as number) : 1),
    (node, slope) =>
      node < foodCount
        ? (volumeM3[node] as number) / slope + (carried[node] as number)
        : (shellCapacity[node - foodCount] as number),
  );
  return { size: nodes + 2, derivative, fastestRate: rates.fastest, spreading };
}

function at(values: Float64Array, index: number): number {
  return values[index] ?? Number.NaN;
}

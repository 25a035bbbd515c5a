import type { Face, Patch, Solid } from '../mesh/index.ts';
import { type Chain, chainsOf, type Holder } from './chains.ts';

/** One layer between the food and what surrounds it, from the food outward. SI units. */
export interface Layer {
  readonly thicknessM: number;
  readonly conductivityWmK: number;
  /** J/(m³·K). Zero: it holds no heat, as an air gap does not. */
  readonly heatCapacityJm3K: number;
}

/** Layers on each face, from the food outward. */
export type Coating = Readonly<Record<Face, readonly Layer[]>>;

/** Where heat enters or leaves: a node, an area, and what lies between the node and the outer surface. */
export interface Contact {
  readonly node: number;
  readonly face: Face;
  readonly areaM2: number;
  readonly lowM: number;
  readonly highM: number;
  readonly atM: number;
  /** m²·K/W between the node and the outside surface. */
  readonly resistance: number;
}

/**
 * The body with its coatings as one network. Nodes 0…foodCount−1 are those of the solid; the rest hold
 * the middles of the layers, and metal its inner side. A layer that resists next to nothing (metal) and lies on
 * the food gives its heat capacity to the food's node.
 */
export interface Network {
  readonly solid: Solid;
  readonly foodCount: number;
  readonly shellCount: number;
  /** J/K that a food node carries besides the food. */
  readonly extraCapacity: Float64Array;
  /** J/K of each shell node. */
  readonly shellCapacity: Float64Array;
  readonly linkA: Int32Array;
  readonly linkB: Int32Array;
  /** W/K. */
  readonly linkConductance: Float64Array;
  readonly contacts: readonly Contact[];
  /** Paths along the mould wall. */
  readonly chains: readonly Chain[];
}

/** A layer of less resistance than this, m²·K/W, has one temperature: 3 mm of steel is 2e-4. */
const TRANSPARENT = 4e-4;
/** Layers that heat needs longer than this to cross, s, are cut up. */
const CROSSING_S = 100;

export function networkOf(solid: Solid, coating: Coating): Network {
  const foodCount = solid.volumeM3.length;
  const extraCapacity = new Float64Array(foodCount);
  const shellCapacity: number[] = [];
  const links: [number, number, number][] = [];
  const contacts: Contact[] = [];
  const holders = new Map<Patch, Holder>();
  const hold = (node: number, capacity: number) => {
    if (node < foodCount) extraCapacity[node] = (extraCapacity[node] ?? 0) + capacity;
    else shellCapacity[node - foodCount] = (shellCapacity[node - foodCount] ?? 0) + capacity;
  };
  for (const patch of solid.patches) {
    const { node, face, lowM, highM, atM } = patch;
    const widening = face === 'side' || face === 'bottom' ? solid.wallCurvature : 0;
    const areaAt = (outM: number) => patch.areaM2 * (1 + widening * outM);
    let inner = node;
    let outM = 0;
    // K/W of layers without heat of their own since the inner node.
    let gap = 0;
    const nodeBeyond = (resistance: number): number => {
      const next = foodCount + shellCapacity.length;
      shellCapacity.push(0);
      links.push([inner, next, 1 / resistance]);
      return next;
    };
    const stack = coating[face].flatMap(cutUp);
    for (const [place, layer] of stack.entries()) {
      const { thicknessM, conductivityWmK, heatCapacityJm3K } = layer;
      const areaM2 = areaAt(outM + thicknessM / 2);
      const own = thicknessM / (conductivityWmK * areaM2);
      const capacity = areaM2 * thicknessM * heatCapacityJm3K;
      outM += thicknessM;
      if (capacity === 0) {
        gap += own;
        continue;
      }
      const next = stack[place + 1];
      if (isTransparent(layer)) {
        if (gap > 0) inner = nodeBeyond(gap);
        gap = 0;
        hold(inner, capacity);
      } else if (next !== undefined && isTransparent(next)) {
        // The outer half goes with the metal, which alone would answer too fast to follow.
        if (gap > 0) inner = nodeBeyond(gap);
        hold(inner, capacity / 2);
        inner = nodeBeyond(own);
        hold(inner, capacity / 2);
        gap = 0;
      } else {
        inner = nodeBeyond(gap + own / 2);
        hold(inner, capacity);
        gap = own / 2;
      }
      holders.set(patch, { node: inner, thicknessM, sheetWK: conductivityWmK * thicknessM });
    }
    const areaM2 = areaAt(outM);
    contacts.push({ node: inner, face, areaM2, lowM, highM, atM, resistance: gap * areaM2 });
  }
  return {
    solid,
    foodCount,
    shellCount: shellCapacity.length,
    extraCapacity,
    shellCapacity: Float64Array.from(shellCapacity),
    linkA: Int32Array.from(links, ([a]) => a),
    linkB: Int32Array.from(links, ([, b]) => b),
    linkConductance: Float64Array.from(links, ([, , conductance]) => conductance),
    contacts,
    chains: chainsOf(solid, holders),
  };
}

const isTransparent = ({ thicknessM, conductivityWmK, heatCapacityJm3K }: Layer) =>
  heatCapacityJm3K > 0 && thicknessM / conductivityWmK < TRANSPARENT;

function cutUp(layer: Layer): Layer[] {
  const { thicknessM, conductivityWmK, heatCapacityJm3K } = layer;
  const pieces = Math.max(
    1,
    Math.ceil(thicknessM * Math.sqrt(heatCapacityJm3K / conductivityWmK / CROSSING_S)),
  );
  return Array.from({ length: pieces }, () => ({ ...layer, thicknessM: thicknessM / pieces }));
}

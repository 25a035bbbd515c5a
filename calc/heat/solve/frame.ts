import type { Network } from './network.ts';

/** What a flow needs of a network and no stage changes. */
export interface Frame {
  readonly network: Network;
  /** Weight of each edge of the section times its mean stretch. */
  readonly edgeGeometry: Float64Array;
  /** Area of each section node over its stretch, m². */
  readonly alongGeometry: Float64Array;
  /** 1/m³. */
  readonly inverseVolume: Float64Array;
  /** Sum of the shape factors that meet at each food node, m. */
  readonly shapeSum: Float64Array;
  /** Twice the largest of those over its volume, 1/m²: times the diffusivity, the fastest rate inside. */
  readonly fastestShape: number;
  /** Food nodes whose temperature is needed: they meet the outside or a layer. */
  readonly surface: Int32Array;
}

export function frameOf(network: Network): Frame {
  const { solid, foodCount } = network;
  const { section, stretch, volumeM3 } = solid;
  const { edgeA, edgeB } = section;
  const edgeGeometry = section.edgeWeight.map(
    (weight, edge) => (weight * (at(stretch, at(edgeA, edge)) + at(stretch, at(edgeB, edge)))) / 2,
  );
  const alongGeometry = section.area.map((area, i) => area / at(stretch, i));
  const shapeSum = shapeSums(network, edgeGeometry, alongGeometry);
  let fastestShape = 0;
  for (let i = 0; i < foodCount; i++) {
    fastestShape = Math.max(fastestShape, (2 * at(shapeSum, i)) / at(volumeM3, i));
  }
  return {
    network,
    edgeGeometry,
    alongGeometry,
    inverseVolume: volumeM3.map((volume) => 1 / volume),
    shapeSum,
    fastestShape,
    surface: surfaceNodes(network),
  };
}

function shapeSums(
  { solid, foodCount }: Network,
  edgeGeometry: Float64Array,
  alongGeometry: Float64Array,
): Float64Array {
  const { section, perLayer, layers, layerThickness, layerPlace } = solid;
  const sums = new Float64Array(foodCount);
  const add = (node: number, weight: number) => {
    sums[node] = at(sums, node) + weight;
  };
  for (let layer = 0; layer < layers; layer++) {
    const base = layer * perLayer;
    for (let edge = 0; edge < edgeGeometry.length; edge++) {
      const weight = Math.abs(at(edgeGeometry, edge)) * at(layerThickness, layer);
      add(base + at(section.edgeA, edge), weight);
      add(base + at(section.edgeB, edge), weight);
    }
    if (layer === 0) continue;
    const gap = at(layerPlace, layer) - at(layerPlace, layer - 1);
    for (let i = 0; i < perLayer; i++) {
      add(base - perLayer + i, at(alongGeometry, i) / gap);
      add(base + i, at(alongGeometry, i) / gap);
    }
  }
  return sums;
}

function surfaceNodes({ foodCount, contacts, linkA, linkB, chains, extraCapacity }: Network): Int32Array {
  const needed = new Uint8Array(foodCount);
  const mark = (node: number) => {
    if (node < foodCount) needed[node] = 1;
  };
  for (const { node } of contacts) mark(node);
  for (const node of linkA) mark(node);
  for (const node of linkB) mark(node);
  for (const { nodes } of chains) for (const node of nodes) mark(node);
  for (const [node, extra] of extraCapacity.entries()) if (extra > 0) mark(node);
  return Int32Array.from(Array.from(needed.keys()).filter((node) => needed[node] === 1));
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}

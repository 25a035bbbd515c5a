import type { Network } from './network.ts';

/**
 * What a flow needs of a network and no stage changes. The net of the section is kept as rows: entries
 * `rowStart[i]` to `rowStart[i + 1]` are the neighbours of section node i. Weights are over the volume,
 * so that times a potential they are J/(m³·s).
 */
export interface Frame {
  readonly network: Network;
  readonly rowStart: Int32Array;
  /** First node of the neighbour: its layers follow one another. */
  readonly rowBase: Int32Array;
  readonly rowWeight: Float64Array;
  readonly rowSum: Float64Array;
  /** What layer a takes from layer b at `a × layers + b`, 1/m², times `alongShare` of the section node. */
  readonly alongWeight: Float64Array;
  readonly alongShare: Float64Array;
  /** How many layers apart two may stand that pass heat. */
  readonly alongBand: number;
  /** Sum of the shape factors that meet at each food node, m. */
  readonly shapeSum: Float64Array;
  /** Twice the largest of those over its volume, 1/m²: times the diffusivity, the fastest rate inside. */
  readonly fastestShape: number;
  /** Food nodes whose temperature is needed: they meet the outside or a layer. */
  readonly surface: Int32Array;
}

export function frameOf(network: Network): Frame {
  const { solid, foodCount } = network;
  const { stretch, volumeM3 } = solid;
  const rows = rowsOf(network);
  const along = alongOf(network);
  const shapeSum = shapeSums(network, rows, along);
  let fastestShape = 0;
  for (let i = 0; i < foodCount; i++) {
    fastestShape = Math.max(fastestShape, (2 * at(shapeSum, i)) / at(volumeM3, i));
  }
  return {
    network,
    ...rows,
    ...along,
    alongShare: stretch.map((own) => 1 / (own * own)),
    shapeSum,
    fastestShape,
    surface: surfaceNodes(network),
  };
}

type Rows = Pick<Frame, 'rowStart' | 'rowBase' | 'rowWeight' | 'rowSum'>;
type Along = Pick<Frame, 'alongWeight' | 'alongBand'>;

/** The edges of the section, each weighted by its mean stretch, gathered at both of its ends. */
function rowsOf({ solid }: Network): Rows {
  const { section, stretch, perLayer, layers } = solid;
  const { edgeA, edgeB, edgeWeight, area } = section;
  const rowStart = new Int32Array(perLayer + 1);
  for (const ends of [edgeA, edgeB]) for (const node of ends) rowStart[node + 1] = at(rowStart, node + 1) + 1;
  for (let i = 0; i < perLayer; i++) rowStart[i + 1] = at(rowStart, i + 1) + at(rowStart, i);
  const rowBase = new Int32Array(2 * edgeA.length);
  const rowWeight = new Float64Array(2 * edgeA.length);
  const rowSum = new Float64Array(perLayer);
  const filled = rowStart.slice();
  for (let edge = 0; edge < edgeA.length; edge++) {
    const [a, b] = [at(edgeA, edge), at(edgeB, edge)];
    const weight = (at(edgeWeight, edge) * (at(stretch, a) + at(stretch, b))) / 2;
    for (const [own, other] of [
      [a, b],
      [b, a],
    ] as const) {
      const entry = at(filled, own);
      const share = weight / (at(area, own) * at(stretch, own));
      filled[own] = entry + 1;
      rowBase[entry] = other * layers;
      rowWeight[entry] = share;
      rowSum[own] = at(rowSum, own) + share;
    }
  }
  return { rowStart, rowBase, rowWeight, rowSum };
}

/** Conductances along over the layer's own extent, and their sum on the diagonal. */
function alongOf({ solid: { layers, along } }: Network): Along {
  const alongWeight = new Float64Array(layers * layers);
  for (let a = 0; a < layers; a++) {
    for (let b = 0; b < layers; b++) {
      const weight = at(along.weight, a * layers + b) / at(along.thickness, a);
      alongWeight[a * layers + b] = at(alongWeight, a * layers + b) + weight;
      alongWeight[a * layers + a] = at(alongWeight, a * layers + a) - weight;
    }
  }
  return { alongWeight, alongBand: along.banded ? 1 : layers };
}

function shapeSums(
  { solid, foodCount }: Network,
  { rowStart, rowWeight }: Rows,
  { alongWeight }: Along,
): Float64Array {
  const { perLayer, layers, stretch, volumeM3 } = solid;
  const fastest = fastestAlong(alongWeight, layers) / 2;
  const sums = new Float64Array(foodCount);
  for (let i = 0; i < perLayer; i++) {
    let across = 0;
    for (let entry = at(rowStart, i); entry < at(rowStart, i + 1); entry++) {
      across += Math.abs(at(rowWeight, entry));
    }
    for (let layer = 0; layer < layers; layer++) {
      const node = i * layers + layer;
      const along = fastest / at(stretch, i) ** 2;
      sums[node] = (across + along) * at(volumeM3, node);
    }
  }
  return sums;
}

/** The fastest rate along, times diffusivity, 1/m²: the largest eigenvalue, by powers. */
function fastestAlong(weight: Float64Array, layers: number): number {
  let vector = Float64Array.from({ length: layers }, (_, layer) => (layer % 2 === 0 ? 1 : -1));
  let rate = 0;
  for (let round = 0; round < 40; round++) {
    const next = vector.map((_, a) => {
      let sum = 0;
      for (let b = 0; b < layers; b++) sum -= at(weight, a * layers + b) * at(vector, b);
      return sum;
    });
    rate = Math.max(...next.map(Math.abs));
    if (rate === 0) return 0;
    vector = next.map((value) => value / rate);
  }
  return MARGIN * rate;
}

/** The powers come from below. */
const MARGIN = 1.02;

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

import type { Face, Patch, Solid } from '../mesh/index.ts';

/** Which node holds the outermost layer of a patch, and thickness and conductivity × thickness, W/K, of that layer. */
export interface Holder {
  readonly node: number;
  readonly thicknessM: number;
  readonly sheetWK: number;
}

/** Nodes one after another along the mould wall, and the conductance between neighbours, W/K. */
export interface Chain {
  readonly nodes: Int32Array;
  readonly conductance: Float64Array;
  /** Whether the wall spreads heat so fast along itself that this is solved for instead of marched. */
  readonly metal: boolean;
}

/** A wall of more than this, conductivity × thickness in W/K, is metal: stoneware of 8 mm has 0.0104. */
const METAL_WK = 0.012;
/** A wall of less than this, or a lining, passes next to nothing along itself: the food within has 0.02. */
const NOTHING_WK = 0.002;

/**
 * Paths along which the wall of a mould spreads heat: round the section of a lying mould, from the middle
 * of the base to the rim; up the side of a standing one. Along the length of a lying mould, and across
 * the base of a standing one, the wall spreads nothing: there its temperature is nearly even.
 */
export function chainsOf(solid: Solid, holders: ReadonlyMap<Patch, Holder>): Chain[] {
  const byPlace = new Map<string, Holder>();
  for (const [{ node, face }, holder] of holders) byPlace.set(`${node} ${face}`, holder);
  const holderAt = (node: number, face: Face) => {
    const holder = byPlace.get(`${node} ${face}`);
    return holder !== undefined && holder.sheetWK >= NOTHING_WK ? holder : undefined;
  };
  const chains = solid.extrusion === 'lying' ? roundSection(solid, holderAt) : upSide(solid, holderAt);
  return chains.filter(({ nodes }) => nodes.length > 1);
}

type HolderAt = (node: number, face: Face) => Holder | undefined;

function roundSection({ section, layers, along }: Solid, holderAt: HolderAt): Chain[] {
  const path = wallPath(section.outline);
  return Array.from({ length: layers }, (_, layer) => {
    const nodes: number[] = [];
    const conductance: number[] = [];
    let gone = 0;
    let sheetWK = 0;
    for (const { node, face, distance } of path.map((stop) => ({
      ...stop,
      distance: lengthOf(section, stop),
    }))) {
      const holder = holderAt(node * layers + layer, face);
      gone += distance;
      if (holder === undefined) continue;
      if (nodes.at(-1) === holder.node) continue;
      if (nodes.length > 0)
        conductance.push(
          (holder.sheetWK * (along.thickness[layer] ?? 0)) / (gone > 0 ? gone : roundCorner(holder)),
        );
      nodes.push(holder.node);
      sheetWK = holder.sheetWK;
      gone = 0;
    }
    return {
      nodes: Int32Array.from(nodes),
      conductance: Float64Array.from(conductance),
      metal: sheetWK > METAL_WK,
    };
  });
}

/** Two holders at one corner of a metal wall stand this far apart, m; of another wall, its thickness. */
const CORNER_M = 1e-3;

const roundCorner = ({ sheetWK, thicknessM }: Holder) => (sheetWK > METAL_WK ? CORNER_M : thicknessM);

interface Stop {
  readonly from: number | null;
  readonly node: number;
  readonly face: Face;
}

/** The stops along base and side, each with the one before it. */
function wallPath(outline: Solid['section']['outline']): Stop[] {
  const walls = outline.filter(({ face }) => face === 'bottom' || face === 'side');
  const ends = new Set(walls.map(({ b }) => b));
  const start = walls.find(({ a }) => !ends.has(a));
  if (start === undefined) return [];
  const stops: Stop[] = [];
  let node = start.a;
  const left = [...walls];
  for (;;) {
    const index = left.findIndex(({ a }) => a === node);
    const edge = left[index];
    if (edge === undefined) return stops;
    left.splice(index, 1);
    stops.push(
      { from: null, node: edge.a, face: edge.face },
      { from: edge.a, node: edge.b, face: edge.face },
    );
    node = edge.b;
  }
}

function lengthOf(section: Solid['section'], { from, node }: Stop): number {
  if (from === null) return 0;
  const at = (values: Float64Array, index: number) => values[index] ?? Number.NaN;
  return Math.hypot(at(section.x, from) - at(section.x, node), at(section.y, from) - at(section.y, node));
}

function upSide({ section, layers, along }: Solid, holderAt: HolderAt): Chain[] {
  const width = new Map<number, number>();
  for (const { a, b, face } of section.outline) {
    const half = lengthOf(section, { from: a, node: b, face }) / 2;
    for (const node of [a, b]) width.set(node, (width.get(node) ?? 0) + half);
  }
  return [...width].map(([node, widthM]) => {
    const held = Array.from({ length: layers }, (_, layer) => holderAt(node * layers + layer, 'side'));
    const sound = held.filter((holder): holder is Holder => holder !== undefined);
    const gap = along.place[1] ?? Number.NaN;
    return {
      nodes: Int32Array.from(sound, (holder) => holder.node),
      conductance: Float64Array.from(sound.slice(1), ({ sheetWK }) => (sheetWK * widthM) / gap),
      metal: (sound[0]?.sheetWK ?? 0) > METAL_WK,
    };
  });
}

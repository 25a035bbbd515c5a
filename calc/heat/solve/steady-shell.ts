import type { Exchange, Ring, SteadyShell, Surroundings } from './around.ts';
import type { Network } from './network.ts';

/** The layers on one patch of food: their nodes from the food outward, and how to get there. */
interface Column {
  readonly food: number;
  readonly nodes: readonly number[];
  /** K/W from the food to each node. */
  readonly resistance: readonly number[];
  /** The outermost node, that of the food where it is bare, and W/K from there to the food. */
  readonly outer: number;
  readonly inward: number;
}

/** The layers on a body, whatever surrounds it. */
export interface Columns {
  /** The network without nodes of its layers. */
  readonly bare: Network;
  readonly around: (surroundings: Surroundings) => Surroundings;
}

/** A mould that holds more than this share of the heat of what is in it leads its own life, and is marched. */
const MOST_HELD = 0.3;

/**
 * Takes the layers off a network. Null when a wall's path runs partly on the food itself, or where wall and lining
 * hold much.
 */
export function columnsOf(network: Network): Columns | null {
  if (heldShare(network) > MOST_HELD) return null;
  const { foodCount, shellCount, linkA, linkB, linkConductance, contacts, chains } = network;
  const ofFood = (node: number) => node < foodCount;
  if (chains.some(({ nodes }) => nodes.some(ofFood) && !nodes.every(ofFood))) return null;
  const inner = new Int32Array(shellCount);
  const resists = new Float64Array(shellCount);
  for (const [link, b] of linkB.entries()) {
    inner[b - foodCount] = at(linkA, link);
    resists[b - foodCount] = 1 / at(linkConductance, link);
  }
  const columns = contacts.map(({ node }): Column => {
    const nodes: number[] = [];
    let food = node;
    while (food >= foodCount) {
      nodes.unshift(food);
      food = at(inner, food - foodCount);
    }
    let far = 0;
    const resistance = nodes.map((own) => (far += at(resists, own - foodCount)));
    return { food, nodes, resistance, outer: node, inward: 1 / far };
  });
  const bare: Network = {
    ...network,
    shellCount: 0,
    shellCapacity: new Float64Array(0),
    linkA: new Int32Array(0),
    linkB: new Int32Array(0),
    linkConductance: new Float64Array(0),
    contacts: contacts.map((contact, i) => ({ ...contact, node: columns[i]?.food ?? contact.node })),
    chains: chains.filter(({ nodes }) => nodes.every(ofFood)),
  };
  return {
    bare,
    around: (surroundings) => {
      const { exchanges, ...steady } = steadyShell(network, columns, surroundings);
      const { bathRate, bathHeatJK } = surroundings;
      const share = bathHeatJK / (bathHeatJK + network.solid.copies * steady.bathLump);
      return {
        ...surroundings,
        exchanges,
        steady,
        bathRate: bathRate && ((timeS, bathC, loadW) => share * bathRate(timeS, bathC, loadW)),
      };
    },
  };
}

/** What the layers hold over what the food does. */
function heldShare({ shellCapacity, solid: { volumeM3 } }: Network): number {
  const sum = (values: Float64Array) => values.reduce((total, own) => total + own, 0);
  return sum(shellCapacity) / (MEAT_J_M3K * sum(volumeM3));
}

function steadyShell(
  network: Network,
  columns: readonly Column[],
  { exchanges, bathMedium, atBath }: Surroundings,
): SteadyShell & Pick<Surroundings, 'exchanges'> {
  const { foodCount, shellCount, shellCapacity, chains } = network;
  const media = 1 + exchanges.reduce((most, { medium }) => Math.max(most, medium), 0);
  const outward = new Float64Array((foodCount + shellCount) * media);
  for (const { node, medium, conductance } of exchanges)
    outward[node * media + medium] = at(outward, node * media + medium) + conductance;
  const outOf = (node: number) => {
    let sum = 0;
    for (let m = 0; m < media; m++) sum += at(outward, node * media + m);
    return sum;
  };

  const ofNode = new Map<number, Column>();
  for (const column of columns) {
    if (column.nodes.length > 0) ofNode.set(column.outer, column);
  }
  const rings = chains
    .filter(({ nodes }) => nodes.every((node) => node >= foodCount))
    .map(({ nodes, conductance }): Ring & { nodes: Int32Array } => {
      const inward = Float64Array.from(nodes, (node) => {
        const column = ofNode.get(node);
        return column === undefined ? 0 : column.inward;
      });
      const back = Float64Array.from(nodes, (_, i) => (i === 0 ? 0 : at(conductance, i - 1)));
      const pivot = new Float64Array(nodes.length);
      for (const [i, node] of nodes.entries()) {
        const own = at(inward, i) + outOf(node) + at(back, i) + (conductance[i] ?? 0);
        pivot[i] = i === 0 ? own : own - at(back, i) ** 2 / at(pivot, i - 1);
      }
      return {
        nodes,
        food: Int32Array.from(nodes, (node) => ofNode.get(node)?.food ?? 0),
        inward,
        outward: Float64Array.from({ length: nodes.length * media }, (_, k) =>
          at(outward, at(nodes, Math.floor(k / media)) * media + (k % media)),
        ),
        media,
        back,
        pivot,
      };
    });

  const inRing = new Set(rings.flatMap(({ nodes }) => [...nodes]));
  const direct: Exchange[] = [];
  const bareFood = new Set<number>();
  for (const { food, outer, inward } of columns) {
    const bare = outer === food;
    if (bare && bareFood.has(food)) continue;
    if (bare) bareFood.add(food);
    if (inRing.has(outer)) continue;
    const share = bare ? 1 : inward / (inward + outOf(outer));
    for (let medium = 0; medium < media; medium++) {
      const conductance = share * at(outward, outer * media + medium);
      if (conductance > 0) direct.push({ node: food, medium, conductance });
    }
  }

  const outSum = new Float64Array(shellCount);
  for (let i = 0; i < shellCount; i++) outSum[i] = outOf(foodCount + i);
  /** Nodes that lie loose: their column's food, and what passes to it. */
  const loose = columns.filter(({ nodes }) => nodes.length > 0 && !inRing.has(nodes.at(-1) ?? -1));

  /** Fills in the outermost nodes, then those between them and the food. */
  function shellOf(foodC: (node: number) => number, mediaC: (medium: number) => number): Float64Array {
    const tempC = new Float64Array(shellCount);
    const mediumC = new Float64Array(media);
    for (let m = 0; m < media; m++) mediumC[m] = mediaC(m);
    for (const ring of rings) {
      const solved = ringTemperatures(ring, foodC, mediumC);
      for (let i = 0; i < solved.length; i++) tempC[at(ring.nodes, i) - foodCount] = at(solved, i);
    }
    for (const { food, outer, inward } of loose) {
      let driven = inward * foodC(food);
      for (let m = 0; m < media; m++) driven += at(outward, outer * media + m) * at(mediumC, m);
      tempC[outer - foodCount] = driven / (inward + at(outSum, outer - foodCount));
    }
    for (const { food, nodes, outer, resistance, inward } of columns) {
      if (nodes.length < 2) continue;
      const foodOwn = foodC(food);
      const apart = (at(tempC, outer - foodCount) - foodOwn) * inward;
      for (let i = 0; i < nodes.length - 1; i++)
        tempC[(nodes[i] ?? 0) - foodCount] = foodOwn + apart * (resistance[i] ?? 0);
    }
    return tempC;
  }

  /** How long the layers of a column take to follow, s. */
  function settlesIn(column: Column): number {
    if (column.nodes.length === 0) return 0;
    let held = 0;
    for (const node of column.nodes) held += at(shellCapacity, node - foodCount);
    return held / (column.inward + at(outSum, column.outer - foodCount));
  }

  // How far each node goes with the food when the media stay: it carries that share of the node's heat, once for
  // what the node takes up, once for what of it passes through the food.
  const follows = shellOf(
    () => 1,
    () => 0,
  );
  const unit = (media: readonly number[]) =>
    shellOf(
      () => 0,
      (medium) => (media.includes(medium) ? 1 : 0),
    );
  const withBath = unit(atBath);
  const fromBath = unit(atBath.length > 0 ? [bathMedium] : []);
  const lump = new Float64Array(foodCount);
  const bathCross = new Float64Array(foodCount);
  let bathLump = 0;
  const slowest = slowestRate(network, direct, rings);
  for (const column of columns) {
    const { food, nodes } = column;
    // While the body evens out as slowly as it does in the end, a layer that lags holds a little more.
    const lags = 1 + Math.min(MOST_LAG, LAG_SHARE * slowest * settlesIn(column));
    for (const node of nodes) {
      const own = at(follows, node - foodCount);
      const held = at(shellCapacity, node - foodCount);
      lump[food] = at(lump, food) + held * own * own * lags;
      bathCross[food] = at(bathCross, food) + held * own * at(withBath, node - foodCount);
      bathLump += held * at(withBath, node - foodCount) * at(fromBath, node - foodCount);
    }
  }

  return {
    exchanges: direct,
    rings,
    lump,
    bathLump,
    bathCross,
    shellC: (foodC, mediaC) => shellOf(foodC, (medium) => at(mediaC, medium)),
    settling: (beforeC, nowC) => {
      const offC = new Float64Array(shellCount);
      const ownTauS = new Float64Array(shellCount);
      const groups = new Map<number, Map<number, number>>();
      const toBath = new Map<number, number>();
      for (const column of columns) {
        const { food, nodes } = column;
        if (nodes.length === 0) continue;
        const group = Math.round(GROUPS * Math.log(Math.max(LEAST_TAU_S, settlesIn(column))));
        const heat = groups.get(group) ?? new Map<number, number>();
        groups.set(group, heat);
        for (const node of nodes) {
          const i = node - foodCount;
          const tauS = Math.exp(group / GROUPS);
          ownTauS[i] = tauS;
          offC[i] = at(beforeC, i) - nowC(i, tauS);
          const own = at(shellCapacity, i) * at(follows, i) * at(offC, i);
          heat.set(food, (heat.get(food) ?? 0) + own);
          const given = at(shellCapacity, i) * at(fromBath, i) * at(offC, i);
          toBath.set(group, (toBath.get(group) ?? 0) + given);
        }
      }
      const all = [...groups.values()];
      const sizes = all.map(({ size }) => size);
      return {
        tauS: Float64Array.from(groups.keys(), (group) => Math.exp(group / GROUPS)),
        start: Int32Array.from([0, ...sizes.map((_, g) => sizes.slice(0, g + 1).reduce((a, b) => a + b, 0))]),
        node: Int32Array.from(all.flatMap((heat) => [...heat.keys()])),
        heatJ: Float64Array.from(all.flatMap((heat) => [...heat.values()])),
        bathJ: Float64Array.from(toBath.values()),
        offC,
        ownTauS,
      };
    },
  };
}

/**
 * About the slowest rate of a body, 1/s: through its surface, and within it at the diffusivity of meat, in series. Of
 * a slab and of a long cylinder this is within a fifth.
 */
function slowestRate(
  { solid: { volumeM3, patches } }: Network,
  direct: readonly Exchange[],
  rings: readonly Ring[],
): number {
  const volume = volumeM3.reduce((sum, own) => sum + own, 0);
  const area = patches.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  let passed = direct.reduce((sum, { conductance }) => sum + conductance, 0);
  for (const { inward, outward, media } of rings) {
    for (const [i, own] of inward.entries()) {
      let out = 0;
      for (let m = 0; m < media; m++) out += at(outward, i * media + m);
      passed += (own * out) / (own + out);
    }
  }
  const within = (volume / area) ** 2 / (2 * MEAT_M2_S);
  return passed > 0 ? 1 / ((volume * MEAT_J_M3K) / passed + within) : 0;
}

const MEAT_M2_S = 1.35e-7;
const MEAT_J_M3K = 3.5e6;
/** Both the rate and the time are upper bounds. This share of their product fits the exact tier best. */
const LAG_SHARE = 0.25;
const MOST_LAG = 0.1;

/** Layers settle no faster than this, s, and are gathered by steps of an eighth. */
const LEAST_TAU_S = 20;
const GROUPS = 8;

function ringTemperatures(
  { food, inward, outward, media, back, pivot }: Ring,
  foodC: (node: number) => number,
  mediaC: Float64Array,
): Float64Array {
  const tempC = new Float64Array(food.length);
  for (let i = 0; i < food.length; i++) {
    let driven = at(inward, i) * foodC(at(food, i));
    for (let m = 0; m < media; m++) driven += at(outward, i * media + m) * at(mediaC, m);
    tempC[i] = i === 0 ? driven : driven + (at(back, i) * at(tempC, i - 1)) / at(pivot, i - 1);
  }
  for (let i = food.length - 1; i >= 0; i--) {
    const later = i === food.length - 1 ? 0 : at(back, i + 1) * at(tempC, i + 1);
    tempC[i] = (at(tempC, i) + later) / at(pivot, i);
  }
  return tempC;
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}

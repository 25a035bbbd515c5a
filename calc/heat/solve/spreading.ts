import type { Chain } from './chains.ts';

/**
 * The implicit part of a step: heat spreading along the mould wall. A metal wall spreads it thousands of
 * times faster than meat, so that part of each stage is solved for, chain by chain, about the state at
 * the start of the step.
 * Source: the implicit–explicit form of the rule in `verwer-sommeijer-2004`.
 */
export interface Spreading {
  /** Takes the capacities at a state and the implicit weight of the step, s. */
  readonly prepare: (state: Float64Array, weightS: number) => void;
  /** Corrects the wall nodes of `into`, which holds the explicit stage, about `start`. */
  readonly relax: (start: Float64Array, into: Float64Array) => void;
}

/**
 * `slopeOf` and `capacityOf` tell, for a node and a state, K per unit of state and J/K. The nodes are counted
 * from `offset` of the states. Null when there is no chain.
 */
export function spreadingOf(
  chains: readonly Chain[],
  offset: number,
  slopeOf: (node: number, state: Float64Array) => number,
  capacityOf: (node: number, slope: number) => number,
): Spreading | null {
  if (chains.length === 0) return null;
  const longest = Math.max(0, ...chains.map(({ nodes }) => nodes.length));
  const capacity = chains.map(({ nodes }) => new Float64Array(nodes.length));
  const slope = chains.map(({ nodes }) => new Float64Array(nodes.length));
  const pivot = chains.map(({ nodes }) => new Float64Array(nodes.length));
  const off = chains.map(({ nodes }) => new Float64Array(nodes.length));
  const work = new Float64Array(longest);

  function prepare(state: Float64Array, weightS: number): void {
    for (const [c, { nodes, conductance }] of chains.entries()) {
      const [caps, slopes, pivots, offs] = [capacity[c], slope[c], pivot[c], off[c]];
      if (caps === undefined || slopes === undefined || pivots === undefined || offs === undefined) continue;
      for (let i = 0; i < nodes.length; i++) {
        const node = nodes[i] as number;
        const own = slopeOf(node, state);
        slopes[i] = own;
        caps[i] = capacityOf(node, own);
        const [left, right] = [i > 0 ? (conductance[i - 1] as number) : 0, (conductance[i] ?? 0) as number];
        const diagonal = (caps[i] as number) + weightS * (left + right);
        offs[i] = weightS * left;
        pivots[i] = i === 0 ? diagonal : diagonal - (offs[i] as number) ** 2 / (pivots[i - 1] as number);
      }
    }
  }

  function relax(start: Float64Array, into: Float64Array): void {
    for (const [c, { nodes }] of chains.entries()) {
      const [caps, slopes, pivots, offs] = [capacity[c], slope[c], pivot[c], off[c]];
      if (caps === undefined || slopes === undefined || pivots === undefined || offs === undefined) continue;
      for (let i = 0; i < nodes.length; i++) {
        const node = nodes[i] as number;
        const moved = (into[offset + node] as number) - (start[offset + node] as number);
        const right = (caps[i] as number) * (slopes[i] as number) * moved;
        work[i] =
          i === 0
            ? right
            : right + ((offs[i] as number) * (work[i - 1] as number)) / (pivots[i - 1] as number);
      }
      let next = 0;
      for (let i = nodes.length - 1; i >= 0; i--) {
        const carried = i === nodes.length - 1 ? 0 : (offs[i + 1] as number) * next;
        next = ((work[i] as number) + carried) / (pivots[i] as number);
        const node = nodes[i] as number;
        into[offset + node] = (start[offset + node] as number) + next / (slopes[i] as number);
      }
    }
  }

  return { prepare, relax };
}

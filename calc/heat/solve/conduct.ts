import type { EnthalpyTable } from '../properties/index.ts';
import type { Frame } from './frame.ts';
import { potentials } from './potentials.ts';

/**
 * Conduction within the food, J/(m³·s), for a state that begins at `offset`, written to `into` at the same
 * places. `potential` is room to work in.
 */
export function conduct(
  frame: Frame,
  table: EnthalpyTable,
  state: Float64Array,
  into: Float64Array,
  potential: Float64Array,
  offset: number,
): void {
  const { rowStart, rowBase, rowWeight, rowSum, alongWeight, alongShare, alongBand } = frame;
  const { layers, perLayer } = frame.network.solid;
  potentials(table, state, potential, offset, perLayer * layers);
  for (let i = 0; i < perLayer; i++) {
    const base = i * layers;
    const to = offset + base;
    const share = alongShare[i] as number;
    const sum = rowSum[i] as number;
    for (let a = 0; a < layers; a++) {
      const from = a > alongBand ? a - alongBand : 0;
      const end = a + alongBand < layers ? a + alongBand + 1 : layers;
      let along = 0;
      for (let b = from; b < end; b++)
        along += (alongWeight[a * layers + b] as number) * (potential[base + b] as number);
      into[to + a] = share * along - sum * (potential[base + a] as number);
    }
    const end = rowStart[i + 1] as number;
    let entry = rowStart[i] as number;
    for (; entry + 1 < end; entry += 2) {
      const [a, b] = [rowBase[entry] as number, rowBase[entry + 1] as number];
      const [wa, wb] = [rowWeight[entry] as number, rowWeight[entry + 1] as number];
      for (let layer = 0; layer < layers; layer++) {
        into[to + layer] =
          (into[to + layer] as number) +
          wa * (potential[a + layer] as number) +
          wb * (potential[b + layer] as number);
      }
    }
    if (entry < end) {
      const a = rowBase[entry] as number;
      const wa = rowWeight[entry] as number;
      for (let layer = 0; layer < layers; layer++) {
        into[to + layer] = (into[to + layer] as number) + wa * (potential[a + layer] as number);
      }
    }
  }
}

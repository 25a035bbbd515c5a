import type { EnthalpyTable } from '../properties/index.ts';
import type { Frame } from './frame.ts';
import { potentials } from './potentials.ts';

/** The one number of layers this is written for. */
export const FEW_LAYERS = 5;

/** `conductSix` for a body of 5 layers: what the preview takes along. */
export function conductFive(
  frame: Frame,
  table: EnthalpyTable,
  state: Float64Array,
  into: Float64Array,
  potential: Float64Array,
  offset: number,
): void {
  const { rowStart, rowBase, rowWeight, rowSum, alongShare } = frame;
  const { weight, thickness } = frame.network.solid.along;
  const { perLayer } = frame.network.solid;
  potentials(table, state, potential, offset, perLayer * FEW_LAYERS);
  const w01 = weight[1] as number;
  const w02 = weight[2] as number;
  const w03 = weight[3] as number;
  const w04 = weight[4] as number;
  const w12 = weight[7] as number;
  const w13 = weight[8] as number;
  const w14 = weight[9] as number;
  const w23 = weight[13] as number;
  const w24 = weight[14] as number;
  const w34 = weight[19] as number;
  const inverse0 = 1 / (thickness[0] as number);
  const inverse1 = 1 / (thickness[1] as number);
  const inverse2 = 1 / (thickness[2] as number);
  const inverse3 = 1 / (thickness[3] as number);
  const inverse4 = 1 / (thickness[4] as number);
  for (let i = 0; i < perLayer; i++) {
    const base = i * FEW_LAYERS;
    const sum = rowSum[i] as number;
    const share = alongShare[i] as number;
    const p0 = potential[base] as number;
    const p1 = potential[base + 1] as number;
    const p2 = potential[base + 2] as number;
    const p3 = potential[base + 3] as number;
    const p4 = potential[base + 4] as number;
    const q01 = w01 * (p1 - p0);
    const q02 = w02 * (p2 - p0);
    const q03 = w03 * (p3 - p0);
    const q04 = w04 * (p4 - p0);
    const q12 = w12 * (p2 - p1);
    const q13 = w13 * (p3 - p1);
    const q14 = w14 * (p4 - p1);
    const q23 = w23 * (p3 - p2);
    const q24 = w24 * (p4 - p2);
    const q34 = w34 * (p4 - p3);
    let s0 = share * inverse0 * (q01 + q02 + q03 + q04) - sum * p0;
    let s1 = share * inverse1 * (-q01 + q12 + q13 + q14) - sum * p1;
    let s2 = share * inverse2 * (-q02 - q12 + q23 + q24) - sum * p2;
    let s3 = share * inverse3 * (-q03 - q13 - q23 + q34) - sum * p3;
    let s4 = share * inverse4 * (-q04 - q14 - q24 - q34) - sum * p4;
    const end = rowStart[i + 1] as number;
    for (let entry = rowStart[i] as number; entry < end; entry++) {
      const from = rowBase[entry] as number;
      const own = rowWeight[entry] as number;
      s0 += own * (potential[from] as number);
      s1 += own * (potential[from + 1] as number);
      s2 += own * (potential[from + 2] as number);
      s3 += own * (potential[from + 3] as number);
      s4 += own * (potential[from + 4] as number);
    }
    const to = offset + base;
    into[to] = s0;
    into[to + 1] = s1;
    into[to + 2] = s2;
    into[to + 3] = s3;
    into[to + 4] = s4;
  }
}

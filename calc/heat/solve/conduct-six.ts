import type { EnthalpyTable } from '../properties/index.ts';
import type { Frame } from './frame.ts';
import { potentials } from './potentials.ts';

/** The one number of layers this is written for. */
export const SMOOTH_LAYERS = 6;

/**
 * `conduct` for a body of 6 layers each of which meets every other, as `smoothLayers` makes them. Written out,
 * so that the layers of a node stay out of memory while its neighbours are gone through: it takes a
 * third of the time, and nearly all the time of a simulation is spent here.
 */
export function conductSix(
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
  potentials(table, state, potential, offset, perLayer * SMOOTH_LAYERS);
  const w01 = weight[1] as number;
  const w02 = weight[2] as number;
  const w03 = weight[3] as number;
  const w04 = weight[4] as number;
  const w05 = weight[5] as number;
  const w12 = weight[8] as number;
  const w13 = weight[9] as number;
  const w14 = weight[10] as number;
  const w15 = weight[11] as number;
  const w23 = weight[15] as number;
  const w24 = weight[16] as number;
  const w25 = weight[17] as number;
  const w34 = weight[22] as number;
  const w35 = weight[23] as number;
  const w45 = weight[29] as number;
  const inverse0 = 1 / (thickness[0] as number);
  const inverse1 = 1 / (thickness[1] as number);
  const inverse2 = 1 / (thickness[2] as number);
  const inverse3 = 1 / (thickness[3] as number);
  const inverse4 = 1 / (thickness[4] as number);
  const inverse5 = 1 / (thickness[5] as number);
  for (let i = 0; i < perLayer; i++) {
    const base = i * SMOOTH_LAYERS;
    const sum = rowSum[i] as number;
    const share = alongShare[i] as number;
    const p0 = potential[base] as number;
    const p1 = potential[base + 1] as number;
    const p2 = potential[base + 2] as number;
    const p3 = potential[base + 3] as number;
    const p4 = potential[base + 4] as number;
    const p5 = potential[base + 5] as number;
    const q01 = w01 * (p1 - p0);
    const q02 = w02 * (p2 - p0);
    const q03 = w03 * (p3 - p0);
    const q04 = w04 * (p4 - p0);
    const q05 = w05 * (p5 - p0);
    const q12 = w12 * (p2 - p1);
    const q13 = w13 * (p3 - p1);
    const q14 = w14 * (p4 - p1);
    const q15 = w15 * (p5 - p1);
    const q23 = w23 * (p3 - p2);
    const q24 = w24 * (p4 - p2);
    const q25 = w25 * (p5 - p2);
    const q34 = w34 * (p4 - p3);
    const q35 = w35 * (p5 - p3);
    const q45 = w45 * (p5 - p4);
    let s0 = share * inverse0 * (q01 + q02 + q03 + q04 + q05) - sum * p0;
    let s1 = share * inverse1 * (-q01 + q12 + q13 + q14 + q15) - sum * p1;
    let s2 = share * inverse2 * (-q02 - q12 + q23 + q24 + q25) - sum * p2;
    let s3 = share * inverse3 * (-q03 - q13 - q23 + q34 + q35) - sum * p3;
    let s4 = share * inverse4 * (-q04 - q14 - q24 - q34 + q45) - sum * p4;
    let s5 = share * inverse5 * (-q05 - q15 - q25 - q35 - q45) - sum * p5;
    const end = rowStart[i + 1] as number;
    for (let entry = rowStart[i] as number; entry < end; entry++) {
      const from = rowBase[entry] as number;
      const own = rowWeight[entry] as number;
      s0 += own * (potential[from] as number);
      s1 += own * (potential[from + 1] as number);
      s2 += own * (potential[from + 2] as number);
      s3 += own * (potential[from + 3] as number);
      s4 += own * (potential[from + 4] as number);
      s5 += own * (potential[from + 5] as number);
    }
    const to = offset + base;
    into[to] = s0;
    into[to + 1] = s1;
    into[to + 2] = s2;
    into[to + 3] = s3;
    into[to + 4] = s4;
    into[to + 5] = s5;
  }
}

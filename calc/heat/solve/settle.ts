import { type EnthalpyTable, temperatureOf } from '../properties/index.ts';
import type { Surroundings } from './around.ts';
import type { Network } from './network.ts';

/** °C of the layers that have no nodes of their own, were they settled. Null where there are none. */
function settledC(
  { foodCount, shellCount }: Network,
  table: EnthalpyTable,
  { steady, media }: Surroundings,
  timeS: number,
  state: Float64Array,
): Float64Array | null {
  if (steady === undefined) return null;
  const mediaC = new Float64Array(MOST_MEDIA);
  media(timeS, at(state, foodCount + shellCount), mediaC);
  return steady.shellC((node) => temperatureOf(table, at(state, node)), mediaC);
}

/** Air, water and one for each face. */
const MOST_MEDIA = 6;

/** The surroundings at the start of a stage, with what the layers give as they settle from `wallsC`. */
export function settlingIn(
  network: Network,
  table: EnthalpyTable,
  around: Surroundings,
  { timeS, state, wallsC }: { timeS: number; state: Float64Array; wallsC: Float64Array },
): Surroundings {
  const now = settledC(network, table, around, timeS, state);
  if (around.steady === undefined || now === null) return around;
  return { ...around, settling: { ...around.steady.settling(wallsC, now), fromS: timeS } };
}

/** °C of the layers at the end of a stage. */
export function wallsAfter(
  network: Network,
  table: EnthalpyTable,
  around: Surroundings,
  timeS: number,
  state: Float64Array,
): Float64Array | null {
  const { settling } = around;
  const settled = settledC(network, table, around, timeS, state);
  if (settled === null || settling === undefined) return null;
  return settled.map(
    (own, i) => own + at(settling.offC, i) * Math.exp((settling.fromS - timeS) / at(settling.ownTauS, i)),
  );
}

/** What a stage gave and took besides what the state holds, J: heat of settling layers, and rise of those lumped. */
export function besides(
  table: EnthalpyTable,
  { steady, settling }: Surroundings,
  timeS: number,
  before: Float64Array,
  after: Float64Array,
): { readonly inJ: number; readonly riseJ: number } {
  let [inJ, riseJ] = [0, 0];
  if (steady === undefined || settling === undefined) return { inJ, riseJ };
  for (const [node, carried] of steady.lump.entries()) {
    if (carried > 0)
      riseJ += carried * (temperatureOf(table, at(after, node)) - temperatureOf(table, at(before, node)));
  }
  for (const [g, tauS] of settling.tauS.entries()) {
    const share = 1 - Math.exp((settling.fromS - timeS) / tauS);
    for (let k = at(settling.start, g); k < at(settling.start, g + 1); k++)
      inJ += share * at(settling.heatJ, k);
  }
  return { inJ, riseJ };
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}

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

/** A moment of a march: s, what the state is and how fast it changes. */
interface Moment {
  readonly timeS: number;
  readonly state: Float64Array;
  readonly rate: Float64Array;
}

/** How fast settled layers would move, °C/s, were the state to go on as it does. */
function drift(
  network: Network,
  table: EnthalpyTable,
  around: Surroundings,
  { timeS, state, rate }: Moment,
  now: Float64Array,
): Float64Array {
  const soon = state.map((own, i) => own + SOON_S * at(rate, i));
  const then = settledC(network, table, around, timeS + SOON_S, soon) ?? now;
  return now.map((own, i) => (at(then, i) - own) / SOON_S);
}

/** A while in which nothing bends, s. */
const SOON_S = 1;

/**
 * The surroundings at the start of a stage, with what the layers give as they settle from `wallsC`. A layer that
 * goes on the way it went, goes on lagging; only what it is off besides has to settle. `moment` is that before the stage.
 */
export function settlingIn(
  network: Network,
  table: EnthalpyTable,
  around: Surroundings,
  moment: Moment,
  wallsC: Float64Array,
): Surroundings {
  const now = settledC(network, table, around, moment.timeS, moment.state);
  if (around.steady === undefined || now === null) return around;
  const moves = drift(network, table, around, moment, now);
  const settling = around.steady.settling(wallsC, (i, tauS) => {
    const own = at(now, i);
    const goesOn = at(moves, i) * (own - at(wallsC, i)) > 0;
    return goesOn ? own - tauS * at(moves, i) : own;
  });
  return { ...around, settling: { ...settling, fromS: moment.timeS } };
}

/**
 * °C of the layers at the end of a stage: settled, less what they lag behind while food and media change, and what
 * is left of where they began. `rate` is that of the state.
 */
export function wallsAfter(
  network: Network,
  table: EnthalpyTable,
  around: Surroundings,
  moment: Moment,
): Float64Array | null {
  const { settling } = around;
  const settled = settledC(network, table, around, moment.timeS, moment.state);
  if (settled === null || settling === undefined) return null;
  const moves = drift(network, table, around, moment, settled);
  return settled.map((own, i) => {
    const tauS = at(settling.ownTauS, i);
    const left = at(settling.offC, i) * Math.exp((settling.fromS - moment.timeS) / tauS);
    return own - tauS * at(moves, i) + left;
  });
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
  // What the food gave the layers as they warmed with the bath.
  const bath = before.length - 2;
  const warmed = at(after, bath) - at(before, bath);
  for (const cross of steady.bathCross) riseJ += cross * warmed;
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

import type { EnthalpyTable } from '../properties/index.ts';
import { temperatureOf } from '../properties/index.ts';
import { atHeight, extremeOnAxis, type Spot } from './centre-line.ts';
import { blend, both, type Pair } from './nets.ts';
import type { Network } from './network.ts';
import type { March } from './step.ts';

/** How a stage ended. */
export interface StageMark {
  readonly stage: number;
  readonly timeMin: number;
  /** False when the stage ran out of time before its end temperature. */
  readonly reached: boolean;
  /** The coldest and the hottest spot of the whole body, with its place in mm: across, up, along. */
  readonly coldest: BodySpot;
  readonly hottest: BodySpot;
}

export interface BodySpot {
  readonly tempC: number;
  readonly acrossMm: number;
  readonly upMm: number;
  readonly alongMm: number;
}

/** The field at one moment: °C of every food node of the symmetric part. */
export interface Picture {
  readonly timeMin: number;
  readonly tempC: Float32Array;
}

/** Curves of a run, all of one length, and what it cost. */
export interface HeatRun {
  readonly timesMin: Float64Array;
  /** Coldest spot of the upright middle line, and its height over the base. */
  readonly coreC: Float64Array;
  readonly coreHeightMm: Float64Array;
  /** Hottest spot of the upright middle line: the one that cools last. */
  readonly hottestC: Float64Array;
  /** The fixed point at mid-height. */
  readonly centreC: Float64Array;
  /** Surface of the food at the ends of the middle line. */
  readonly bottomC: Float64Array;
  readonly topC: Float64Array;
  /** Temperature the body would even out to. */
  readonly meanC: Float64Array;
  readonly bathC: Float64Array;
  readonly stages: readonly StageMark[];
  readonly pictures: readonly Picture[];
  /** J of the whole body with its coatings: through the outer faces, and the rise of what it holds. */
  readonly energy: { readonly inJ: number; readonly riseJ: number };
  /** The net the pictures are drawn on. */
  readonly network: Network;
  readonly cost: { readonly nodes: number; readonly steps: number; readonly evaluations: number };
}

export interface RecordOptions {
  readonly everyMin: number;
  readonly pictureEveryMin?: number;
}

/** What is read off one net at one moment. */
interface Reading {
  readonly coldest: Spot;
  readonly hottest: Spot;
  readonly centreC: number;
  readonly bottomC: number;
  readonly topC: number;
  readonly bathC: number;
}

/** Weights of the values and slopes at both ends of a step of `lengthS` seconds, at a share of it. */
function cubicWeights(share: number, lengthS: number): [number, number, number, number] {
  const rest = 1 - share;
  return [
    rest * rest * (1 + 2 * share),
    share * share * (3 - 2 * share),
    share * rest * rest * lengthS,
    -share * share * rest * lengthS,
  ];
}

/** Collects the curves, pictures and stage ends of a run. Values are blended from both nets. */
export function recorderOf(
  nets: Pair<Network>,
  table: EnthalpyTable,
  start: Float64Array,
  options: RecordOptions,
) {
  const { everyMin, pictureEveryMin = Number.POSITIVE_INFINITY } = options;
  const { fine } = nets;
  const fineSize = fine.foodCount + fine.shellCount + 2;
  const readers = { fine: readerOf(fine, table, 0), coarse: readerOf(nets.coarse, table, fineSize) };
  const rows: number[][] = [];
  const stages: StageMark[] = [];
  const pictures: Picture[] = [];
  const cost = { nodes: start.length - 4, steps: 0, evaluations: 0 };
  let lastState = start.slice();

  function addRow(timeS: number, readings: Pair<Reading>, meanEnthalpy: number): void {
    const value = (of: (reading: Reading) => number) => blend(both(readings, of));
    rows.push([
      timeS / 60,
      value(({ coldest }) => coldest.tempC),
      1000 * readings.fine.coldest.heightM,
      value(({ hottest }) => hottest.tempC),
      value(({ centreC }) => centreC),
      temperatureOf(table, meanEnthalpy),
      value(({ bathC }) => bathC),
      value(({ bottomC }) => bottomC),
      value(({ topC }) => topC),
    ]);
  }

  function addPicture(timeS: number, read: (index: number) => number): void {
    const tempC = new Float32Array(fine.foodCount);
    for (let node = 0; node < tempC.length; node++) tempC[node] = temperatureOf(table, read(node));
    pictures.push({ timeMin: timeS / 60, tempC });
  }

  const readNow = (state: Float64Array) => (index: number) => at(state, index);
  const read = (of: (index: number) => number) => both(readers, (reader) => reader.at(of));
  const meanOf = (state: Float64Array) => blend(both(readers, (reader) => reader.mean(state)));
  addRow(0, read(readNow(start)), meanOf(start));
  addPicture(0, readNow(start));
  let nextS = 60 * everyMin;
  let nextPictureS = 60 * pictureEveryMin;

  /** Adds the points that fall in the last step, between its ends by the cubic through values and slopes. */
  function step({ timeS, lastStepS, state, before, rate, beforeRate }: March): void {
    if (nextS > timeS && nextPictureS > timeS) return;
    const from = timeS - lastStepS;
    const mean = {
      before: meanOf(before),
      after: meanOf(state),
      slopeBefore: meanOf(beforeRate),
      slopeAfter: meanOf(rate),
    };
    const shareAt = (s: number) => (lastStepS > 0 ? (s - from) / lastStepS : 1);
    const cubic = (share: number) => {
      const [w0, w1, s0, s1] = cubicWeights(share, lastStepS);
      return (i: number) =>
        w0 * (before[i] as number) +
        w1 * (state[i] as number) +
        s0 * (beforeRate[i] as number) +
        s1 * (rate[i] as number);
    };
    for (; nextS <= timeS; nextS += 60 * everyMin) {
      const share = shareAt(nextS);
      const [w0, w1, s0, s1] = cubicWeights(share, lastStepS);
      const meanThen = w0 * mean.before + w1 * mean.after + s0 * mean.slopeBefore + s1 * mean.slopeAfter;
      addRow(nextS, read(cubic(share)), meanThen);
    }
    for (; nextPictureS <= timeS; nextPictureS += 60 * pictureEveryMin) {
      addPicture(nextPictureS, cubic(shareAt(nextPictureS)));
    }
  }

  function stageEnd(stage: number, march: March, reached: boolean): void {
    const { timeS, state } = march;
    if (timeS / 60 - (rows.at(-1)?.[0] ?? -1) > 1e-9) addRow(timeS, read(readNow(state)), meanOf(state));
    addPicture(timeS, readNow(state));
    stages.push({
      stage,
      timeMin: timeS / 60,
      reached,
      coldest: extremeOfBody(fine, table, state, 1),
      hottest: extremeOfBody(fine, table, state, -1),
    });
    cost.steps += march.steps;
    cost.evaluations += march.evaluations;
    lastState = state.slice();
  }

  /** `handed`: J of the symmetric part that went in or was taken up besides what the state holds. */
  function finish(handed: HeatRun['energy']): HeatRun {
    const column = (index: number) => Float64Array.from(rows, (row) => row[index] ?? Number.NaN);
    const { copies } = fine.solid;
    return {
      timesMin: column(0),
      coreC: column(1),
      coreHeightMm: column(2),
      hottestC: column(3),
      centreC: column(4),
      meanC: column(5),
      bathC: column(6),
      bottomC: column(7),
      topC: column(8),
      stages,
      pictures,
      energy: {
        inJ: copies * (at(lastState, fineSize - 1) + handed.inJ),
        riseJ: copies * (heldJ(fine, table, lastState) - heldJ(fine, table, start) + handed.riseJ),
      },
      network: fine,
      cost,
    };
  }

  return { step, stageEnd, finish };
}

/** Reads one net whose state starts at `offset` of the joint state. */
function readerOf({ solid, foodCount, shellCount }: Network, table: EnthalpyTable, offset: number) {
  const { axisNodes, axisHeights, volumeM3 } = solid;
  const midHeight = (at(axisHeights, 0) + at(axisHeights, axisHeights.length - 1)) / 2;
  const volume = volumeM3.reduce((sum, value) => sum + value, 0);
  const temps = new Float64Array(axisNodes.length);
  return {
    at: (read: (index: number) => number): Reading => {
      for (let i = 0; i < temps.length; i++)
        temps[i] = temperatureOf(table, read(offset + (axisNodes[i] as number)));
      return {
        coldest: extremeOnAxis(axisHeights, temps, 'coldest'),
        hottest: extremeOnAxis(axisHeights, temps, 'hottest'),
        centreC: atHeight(axisHeights, temps, midHeight),
        bottomC: at(temps, 0),
        topC: at(temps, temps.length - 1),
        bathC: read(offset + foodCount + shellCount),
      };
    },
    /** Mean over the volume of what the food nodes of a joint array hold. */
    mean: (values: Float64Array): number => {
      let held = 0;
      for (let i = 0; i < foodCount; i++) held += (values[offset + i] as number) * (volumeM3[i] as number);
      return held / volume;
    },
  };
}

/** Heat held by the symmetric part, J: the food, the metal on it, and the layers. */
function heldJ(network: Network, table: EnthalpyTable, state: Float64Array): number {
  const { foodCount, solid, extraCapacity, shellCapacity } = network;
  let sum = 0;
  for (let i = 0; i < foodCount; i++) {
    sum += at(state, i) * at(solid.volumeM3, i);
    const extra = at(extraCapacity, i);
    if (extra > 0) sum += extra * temperatureOf(table, at(state, i));
  }
  for (let i = 0; i < shellCapacity.length; i++) sum += at(shellCapacity, i) * at(state, foodCount + i);
  return sum;
}

/** The coldest (sign 1) or hottest (sign −1) node of the body. */
function extremeOfBody(
  { solid, foodCount }: Network,
  table: EnthalpyTable,
  state: Float64Array,
  sign: 1 | -1,
): BodySpot {
  let best = 0;
  for (let i = 1; i < foodCount; i++) if (sign * at(state, i) < sign * at(state, best)) best = i;
  const inSection = Math.floor(best / solid.layers);
  const place = at(solid.along.place, best % solid.layers);
  const [x, y] = [at(solid.section.x, inSection), at(solid.section.y, inSection)];
  const [across, up, along] = solid.extrusion === 'lying' ? [x, y, place] : [y, place, x];
  return {
    tempC: temperatureOf(table, at(state, best)),
    acrossMm: 1000 * across,
    upMm: 1000 * up,
    alongMm: 1000 * along,
  };
}

function at(values: Float64Array, index: number): number {
  return values[index] ?? Number.NaN;
}

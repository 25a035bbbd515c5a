import { heightMm, solidOfShape } from '../mesh/index.ts';
import { type EnthalpyTable, enthalpyOf, enthalpyTable } from '../properties/index.ts';
import { courseAt, type HeatStage } from '../stages/index.ts';
import { surroundingsOf } from '../stages/surroundings.ts';
import type { BatchThermal } from './batch-thermal.ts';
import { coreOf } from './centre-line.ts';
import { FEW_LAYERS } from './conduct-five.ts';
import { SMOOTH_LAYERS } from './conduct-six.ts';
import { flowOf } from './flow.ts';
import { type Frame, frameOf } from './frame.ts';
import { both, halves, joined, joinFlows, type Pair } from './nets.ts';
import { type Coating, type Network, networkOf } from './network.ts';
import { type HeatRun, recorderOf } from './record.ts';
import { besides, settlingIn, wallsAfter } from './settle.ts';
import { soundBatch, soundStage } from './sound.ts';
import { type Columns, columnsOf } from './steady-shell.ts';
import { type Stepper, stepperOf } from './step.ts';

/** `exact` is what plans and sheets show; `preview` answers a slider. */
export type Tier = 'exact' | 'preview';

export interface SimulateOptions {
  readonly tier?: Tier;
  /** Minutes between the points of the curves: 1 unless told, 2 in the preview. */
  readonly everyMin?: number;
  /** Minutes between the pictures of the section. Without it only the start and the stage ends are kept. */
  readonly pictureEveryMin?: number;
  /** Overrides the tier: cells of the coarse net through the shortest way, and the error allowed in a step, °C. */
  readonly fineness?: number;
  readonly toleranceC?: number;
  /** Steps of this length, s, whatever their error: to study the order of the method. */
  readonly fixedStepS?: number;
}

export interface TierSettings {
  readonly fineness: number;
  /** The same where water stands part-way up: its line needs cells of its own. */
  readonly partWet: number;
  readonly toleranceC: number;
  /** The same for cold meat set to freeze: the reading that counts is that of a face at its freezing point. */
  readonly tempering: { readonly fineness: number; readonly toleranceC: number };
}

export const TIERS: Readonly<Record<Tier, TierSettings>> = {
  exact: { fineness: 6, partWet: 6, toleranceC: 0.003, tempering: { fineness: 9, toleranceC: 0.003 } },
  preview: { fineness: 3, partWet: 3, toleranceC: 0.015, tempering: { fineness: 6, toleranceC: 0.006 } },
};

/** Volumetric heat that turns an enthalpy error into degrees, J/(m³·K): unfrozen food. */
const TYPICAL_HEAT = 3.6e6;
/** First step of a stage, s: its surroundings have just changed. */
const FIRST_STEP_S = 2;
/** A bath that goes on must have been there before. */
const followsOn = (stages: readonly HeatStage[]) =>
  stages.every(({ water }, index) => {
    if (water?.bath.kind !== 'oven' || water.bath.startC !== null) return true;
    return stages[index - 1]?.water?.bath.kind === 'oven';
  });

/** How near the core must come to a stage's end temperature, °C. */
const LANDING_C = 2e-4;

/**
 * Runs a body through its stages, the whole field handed from each to the next.
 * Null when a measure, a film, a temperature or a time is not a number that can be computed with.
 */
export function simulate(
  batch: BatchThermal,
  stages: readonly HeatStage[],
  options: SimulateOptions = {},
): HeatRun | null {
  if (!soundBatch(batch) || !stages.every(soundStage) || !followsOn(stages)) return null;
  const settings = TIERS[options.tier ?? 'exact'];
  const tempered = isTempered(batch, stages);
  const { fixedStepS } = options;
  const usual = isPartWet(batch, stages) ? settings.partWet : settings.fineness;
  const fineness = options.fineness ?? (tempered ? settings.tempering.fineness : usual);
  const toleranceC = options.toleranceC ?? (tempered ? settings.tempering : settings).toleranceC;
  const table = enthalpyTable(batch.material);
  const steadyWalls = options.tier === 'preview' && batch.shape.kind !== 'slab' && !tempered;
  const bodies = bodiesOf(batch, fineness, freezes(batch, stages), steadyWalls);
  const nets = both(bodies, ({ frame }) => frame.network);
  const fineSize = sizeOf(nets.fine);
  let state = joined(both(nets, (net) => startState(net, table, batch.startC)));
  const everyMin = options.everyMin ?? (options.tier === 'preview' ? 2 : 1);
  const recorder = recorderOf(nets, table, state, { ...options, everyMin });
  let timeS = 0;
  let wallsC: Pair<Float64Array> = both(bodies, ({ outer }) =>
    new Float64Array(outer.shellCount).fill(batch.startC),
  );
  let rates: Pair<Float64Array> = both(nets, (net) => new Float64Array(sizeOf(net)));
  const handed = { inJ: 0, riseJ: 0 };
  for (const [index, stage] of stages.entries()) {
    const bath = stage.water?.bath;
    const parts = halves(state, fineSize);
    const bathStartC = bath?.kind === 'oven' ? bath.startC : null;
    if (bathStartC !== null) both(parts, (part) => part.fill(bathStartC, part.length - 2, part.length - 1));
    const surrounded = (net: 'fine' | 'coarse') => {
      const { outer, walls } = bodies[net];
      const surroundings = surroundingsOf(outer, stage, timeS);
      if (walls === null) return surroundings;
      const moment = { timeS, state: parts[net], rate: rates[net] };
      return settlingIn(nets[net], table, walls.around(surroundings), moment, wallsC[net]);
    };
    const around = { fine: surrounded('fine'), coarse: surrounded('coarse') };
    const begun = parts.fine.slice();
    const flow = joinFlows({
      fine: flowOf(bodies.fine.frame, table, around.fine, 0),
      coarse: flowOf(bodies.coarse.frame, table, around.coarse, fineSize),
    });
    const stepper = stepperOf(flow, timeS, state, {
      toleranceC: fixedStepS === undefined ? toleranceC : Number.POSITIVE_INFINITY,
      weights: joined(both(nets, (net) => weightsOf(net, bath?.kind === 'oven'))),
      firstStepS: fixedStepS ?? FIRST_STEP_S,
      longestStepS: fixedStepS ?? Number.POSITIVE_INFINITY,
      plain: fixedStepS !== undefined,
    });
    const core: CoreReader = (joint, which) => coreOf(nets, table, halves(joint, fineSize), which).tempC;
    const reached = runStage(stepper, stage, timeS, core, recorder.step);
    state = stepper.march.state;
    timeS = stepper.march.timeS;
    const ended = halves(state, fineSize);
    rates = halves(stepper.march.rate, fineSize);
    const wallsThen = (net: 'fine' | 'coarse') =>
      wallsAfter(nets[net], table, around[net], { timeS, state: ended[net], rate: rates[net] }) ??
      wallsC[net];
    wallsC = { fine: wallsThen('fine'), coarse: wallsThen('coarse') };
    const more = besides(table, around.fine, timeS, begun, ended.fine);
    handed.inJ += more.inJ;
    handed.riseJ += more.riseJ;
    recorder.stageEnd(index, stepper.march, reached);
  }
  return recorder.finish(handed);
}

/** One net of a body: what is marched, and what meets the surroundings. */
interface Body {
  readonly frame: Frame;
  /** The network with a node for every layer. */
  readonly outer: Network;
  /** Wall and lining taken off as nodes; null where they are marched. */
  readonly walls: Columns | null;
}

const known = new WeakMap<BatchThermal, Map<string, Pair<Body>>>();

/** Both nets of a batch. The same batch object is netted once for each fineness. */
function bodiesOf(
  batch: BatchThermal,
  fineness: number,
  freezing: boolean,
  steadyWalls: boolean,
): Pair<Body> {
  const ofBatch = known.get(batch) ?? new Map<string, Pair<Body>>();
  known.set(batch, ofBatch);
  const key = `${fineness} ${freezing} ${steadyWalls}`;
  const few = steadyWalls && batch.shape.kind !== 'half-cylinder';
  const smooth = freezing ? null : few ? FEW_LAYERS : SMOOTH_LAYERS;
  const netted = ofBatch.get(key);
  if (netted !== undefined) return netted;
  const coating = coatingOf(batch);
  const body = (refine: 1 | 2): Body => {
    const outer = networkOf(solidOfShape(batch.shape, fineness, refine, smooth, steadyWalls), coating);
    const walls = steadyWalls ? columnsOf(outer) : null;
    return { frame: frameOf(walls === null ? outer : walls.bare), outer, walls };
  };
  const bodies = { fine: body(2), coarse: body(1) };
  ofBatch.set(key, bodies);
  return bodies;
}

/** Reads the slowest spot of the middle line off a joint state, °C. */
type CoreReader = (state: Float64Array, which: 'coldest' | 'hottest') => number;

/** Meat that starts under this and is set to freeze is tempered. */
const COLD_C = 15;

function isTempered(batch: BatchThermal, stages: readonly HeatStage[]): boolean {
  return batch.startC < COLD_C && freezes(batch, stages);
}

/** Whether water stands part-way up the body in some stage. */
function isPartWet({ shape }: BatchThermal, stages: readonly HeatStage[]): boolean {
  const height = heightMm(shape);
  return stages.some(({ water }) => water !== undefined && water.levelMm > 0 && water.levelMm < height);
}

/** Whether some of the body may freeze or thaw. */
function freezes({ material, startC }: BatchThermal, stages: readonly HeatStage[]): boolean {
  const freezingC = Math.max(...material.cornersC);
  return startC < freezingC || stages.some(({ air }) => courseAt(air.tempC, Number.MAX_VALUE) < freezingC);
}

/** Marches one stage to its end. Tells whether its end temperature was reached (true when it has none). */
function runStage(
  stepper: Stepper,
  { end }: HeatStage,
  startS: number,
  core: CoreReader,
  onStep: (march: Stepper['march']) => void,
): boolean {
  const endS = startS + 60 * (end.when === 'time' ? end.minutes : end.mostMin);
  /** How far the core is past the wanted temperature, °C. */
  const past = (state: Float64Array): number => {
    if (end.when === 'time') return -1;
    return end.when === 'core-reaches'
      ? core(state, 'coldest') - end.tempC
      : end.tempC - core(state, 'hottest');
  };
  let before = past(stepper.march.state);
  if (end.when !== 'time' && before >= 0) return true;
  while (stepper.march.timeS < endS - 1e-9) {
    stepper.advance(endS - stepper.march.timeS);
    let after = past(stepper.march.state);
    let landings = 0;
    let reach = stepper.march.lastStepS;
    while (after > LANDING_C && landings++ < 6) {
      stepper.undo();
      reach *= before / (before - after);
      stepper.advance(reach);
      after = past(stepper.march.state);
    }
    onStep(stepper.march);
    if (end.when !== 'time' && after >= -LANDING_C) return true;
    before = after;
  }
  return end.when === 'time';
}

const sizeOf = ({ foodCount, shellCount }: Network) => foodCount + shellCount + 2;

function startState(network: Network, table: EnthalpyTable, startC: number): Float64Array {
  const { foodCount, shellCount } = network;
  const state = new Float64Array(foodCount + shellCount + 2);
  state.fill(enthalpyOf(table, startC), 0, foodCount);
  state.fill(startC, foodCount, foodCount + shellCount);
  return state;
}

/** Nodes of a metal wall are left out: their own rate is solved for, and would be taken for error. */
function weightsOf(network: Network, withBath: boolean): Float64Array {
  const { foodCount, shellCount } = network;
  const solved = solvedOf(network);
  const weights = new Float64Array(foodCount + shellCount + 2);
  weights.fill(1 / TYPICAL_HEAT, 0, foodCount);
  weights.fill(1, foodCount, foodCount + shellCount);
  if (withBath) weights[foodCount + shellCount] = 1;
  return weights.map((weight, i) => (solved[i] === 1 ? 0 : weight));
}

function solvedOf({ foodCount, shellCount, chains }: Network): Float64Array {
  const solved = new Float64Array(foodCount + shellCount + 2);
  for (const { nodes, metal } of chains) {
    if (metal) for (const node of nodes) solved[node] = 1;
  }
  return solved;
}

function coatingOf({ layers = {} }: BatchThermal): Coating {
  const { bottom = [], side = [], top = [], end = [] } = layers;
  return { bottom, side, top, end };
}

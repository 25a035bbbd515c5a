import { chebyshevRule, longestStep, stagesFor } from './chebyshev.ts';
import type { Flow } from './flow.ts';

/** What a march remembers between steps. All arrays are its own. */
export interface March {
  timeS: number;
  state: Float64Array;
  /** Derivative at `timeS`. */
  rate: Float64Array;
  /** State and derivative before the last step, and its length, s. */
  before: Float64Array;
  beforeRate: Float64Array;
  lastStepS: number;
  /** Evaluations of the derivative so far. */
  evaluations: number;
  steps: number;
}

export interface Stepper {
  readonly march: March;
  /** One accepted step of at most `mostS` seconds. Returns its length. */
  readonly advance: (mostS: number) => number;
  /** Goes back before the last step. */
  readonly undo: () => void;
}

export interface StepOptions {
  /** Error allowed in one step, in degrees. */
  readonly toleranceC: number;
  /** Scale that turns a state entry into degrees. Zero leaves the entry out of the error. */
  readonly weights: Float64Array;
  readonly firstStepS: number;
  readonly longestStepS: number;
  /** Leaves the rule as it is, its error not mended along the slope. */
  readonly plain: boolean;
}

/** More stages than this in one step lose digits to rounding and gain nothing. */
const MOST_STAGES = 60;
const SHRINK = 0.1;
/** How much of the squared error must lie along the slope to be taken for that of one mode. */
const ONE_MODE = 0.985;
/** How far along its slope a step may be mended, as a share of itself. */
const MOST_ALONG = 0.002;
const GROW = 4;

/** Marches a flow in time with steps chosen by their own error. */
export function stepperOf(flow: Flow, timeS: number, state: Float64Array, options: StepOptions): Stepper {
  const { size, derivative, fastestRate, spreading } = flow;
  const march: March = {
    timeS,
    state: state.slice(),
    rate: new Float64Array(size),
    before: state.slice(),
    beforeRate: new Float64Array(size),
    lastStepS: 0,
    evaluations: 1,
    steps: 0,
  };
  derivative(timeS, march.state, march.rate);
  march.beforeRate.set(march.rate);
  let proposedS = options.firstStepS;
  let [older, newer, spare] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
  const slope = new Float64Array(size);
  const weightSum = options.weights.reduce((sum, weight) => sum + (weight > 0 ? 1 : 0), 0);

  const relaxed = new Float64Array(size);
  let reached: Float64Array = relaxed;

  /** The state a stage stands for: the explicit stage, its wall nodes solved for. */
  function settle(stage: Float64Array): Float64Array {
    if (spreading === null) return stage;
    relaxed.set(stage);
    spreading.relax(march.state, relaxed);
    return relaxed;
  }

  /** Leaves the new state in `reached` and its derivative in `slope`. */
  function attempt(stepS: number, stages: number): void {
    const { stages: s, firstWeight, mu, nu, muTilde, gammaTilde, places } = chebyshevRule(stages);
    const { state: start, rate, timeS: from } = march;
    spreading?.prepare(start, firstWeight * stepS);
    older.set(start);
    for (let i = 0; i < size; i++)
      newer[i] = (start[i] as number) + firstWeight * stepS * (rate[i] as number);
    for (let j = 2; j <= s; j++) {
      derivative(from + (places[j - 1] as number) * stepS, settle(newer), slope);
      const [m, n] = [mu[j] as number, nu[j] as number];
      const rest = 1 - m - n;
      const [own, initial] = [(muTilde[j] as number) * stepS, (gammaTilde[j] as number) * stepS];
      for (let i = 0; i < size; i++) {
        spare[i] =
          rest * (start[i] as number) +
          m * (newer[i] as number) +
          n * (older[i] as number) +
          own * (slope[i] as number) +
          initial * (rate[i] as number);
      }
      [older, newer, spare] = [newer, spare, older];
    }
    reached = settle(newer);
    derivative(from + stepS, reached, slope);
    march.evaluations += s;
  }

  /**
   * Root mean square of the estimated error of the attempt, over what is allowed, once the part of it that
   * lies along the slope is taken out. `along` is that part, as a share of the step.
   */
  function errorOf(stepS: number, mostAlong: number): { readonly error: number; readonly along: number } {
    const { state: start, rate } = march;
    const { weights } = options;
    let [errors, slopes, both] = [0, 0, 0];
    for (let i = 0; i < size; i++) {
      const weight = weights[i] as number;
      if (weight === 0) continue;
      const moved = stepS * (slope[i] as number);
      const error =
        0.8 * ((start[i] as number) - (reached[i] as number)) + 0.4 * (stepS * (rate[i] as number) + moved);
      errors += (error * weight) ** 2;
      slopes += (moved * weight) ** 2;
      both += error * moved * weight * weight;
    }
    const wide = Math.sqrt(errors / weightSum) / options.toleranceC;
    const along = both / slopes;
    const oneMode = both * both > ONE_MODE * errors * slopes;
    if (!oneMode || Math.abs(along) > mostAlong) return { error: wide, along: 0 };
    const left = Math.max(0, errors - along * both);
    const narrow = Math.sqrt(left / weightSum) / options.toleranceC;
    return { error: Math.min(wide, Math.max(narrow, (Math.abs(along) / MOST_ALONG) ** 1.5)), along };
  }

  /**
   * Moves the attempt along its own slope by a share of the step. Where one mode is left, as late in any
   * cook or chill, nearly all of the error of a step lies that way; without this it adds up to minutes.
   */
  function mend(stepS: number, along: number): void {
    const { rate, state: start, timeS: from } = march;
    if (spreading !== null) {
      for (let i = 0; i < size; i++) spare[i] = (start[i] as number) + along * stepS * (slope[i] as number);
      spreading.relax(start, spare);
      for (let i = 0; i < size; i++)
        reached[i] = (reached[i] as number) + (spare[i] as number) - (start[i] as number);
      derivative(from + stepS, reached, slope);
      march.evaluations++;
      return;
    }
    for (let i = 0; i < size; i++) {
      const own = slope[i] as number;
      reached[i] = (reached[i] as number) + along * stepS * own;
      slope[i] = own + along * (own - (rate[i] as number));
    }
  }

  function advance(mostS: number): number {
    let stepS = Math.min(proposedS, mostS, options.longestStepS);
    const fastest = fastestRate(march.state);
    for (;;) {
      stepS = Math.min(stepS, longestStep(MOST_STAGES, fastest));
      attempt(stepS, stagesFor(stepS, fastest));
      const { error, along } = errorOf(stepS, options.plain ? 0 : 0.5 / (stepS * fastest));
      const factor = Math.min(GROW, Math.max(SHRINK, 0.8 / Math.cbrt(Math.max(error, 1e-9))));
      if (error <= 1 || stepS < 1e-6) {
        const cut = stepS < proposedS && stepS === mostS;
        if (!cut || factor < 1) proposedS = stepS * factor;
        if (along !== 0) mend(stepS, along);
        break;
      }
      if (!Number.isFinite(error)) stepS *= SHRINK;
      else stepS *= factor;
    }
    march.before.set(march.state);
    march.beforeRate.set(march.rate);
    march.state.set(reached);
    march.rate.set(slope);
    march.timeS += stepS;
    march.lastStepS = stepS;
    march.steps++;
    return stepS;
  }

  function undo(): void {
    march.state.set(march.before);
    march.rate.set(march.beforeRate);
    march.timeS -= march.lastStepS;
    march.lastStepS = 0;
  }

  return { march, advance, undo };
}

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
}

/** More stages than this in one step lose digits to rounding and gain nothing. */
const MOST_STAGES = 60;
const SHRINK = 0.1;
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

  /** Root mean square of the estimated error of the attempt, over what is allowed. */
  function errorOf(stepS: number): number {
    const { state: start, rate } = march;
    const { weights } = options;
    let sum = 0;
    for (let i = 0; i < size; i++) {
      const weight = weights[i] as number;
      if (weight === 0) continue;
      const error =
        0.8 * ((start[i] as number) - (reached[i] as number)) +
        0.4 * stepS * ((rate[i] as number) + (slope[i] as number));
      sum += (error * weight) ** 2;
    }
    return Math.sqrt(sum / weightSum) / options.toleranceC;
  }

  function advance(mostS: number): number {
    let stepS = Math.min(proposedS, mostS, options.longestStepS);
    const fastest = fastestRate(march.state);
    for (;;) {
      stepS = Math.min(stepS, longestStep(MOST_STAGES, fastest));
      attempt(stepS, stagesFor(stepS, fastest));
      const error = errorOf(stepS);
      const factor = Math.min(GROW, Math.max(SHRINK, 0.8 / Math.cbrt(Math.max(error, 1e-9))));
      if (error <= 1 || stepS < 1e-6) {
        const cut = stepS < proposedS && stepS === mostS;
        if (!cut || factor < 1) proposedS = stepS * factor;
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

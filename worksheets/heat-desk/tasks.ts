import {
  type CarryOverPull,
  type DepthRow,
  depthRows,
  type LiveCook,
  type LiveForecast,
  liveForecast,
  type PlanBands,
  type PlanOutcome,
  type PlanProblem,
  planBands,
  pullForCarryOver,
  solvePlan,
} from '@larderwright/calc/cook-plan';

/** Work that is too heavy for the page, as plain data. */
export type HeatTask =
  | {
      readonly kind: 'solve';
      readonly problem: PlanProblem;
      readonly tier: 'exact' | 'preview';
      readonly pictureEveryMin: number;
    }
  | {
      readonly kind: 'bands';
      readonly problem: PlanProblem;
      readonly draws: number;
      /** The same seed draws the same kitchens. 1 to 2 147 483 646. */
      readonly seed: number;
      readonly chillMostMin: number;
    }
  | {
      readonly kind: 'depths';
      readonly problems: readonly { readonly depthMm: number; readonly problem: PlanProblem | null }[];
    }
  | { readonly kind: 'pull'; readonly problem: PlanProblem }
  | {
      readonly kind: 'live';
      readonly cook: LiveCook;
      readonly draws: number;
      readonly seed: number;
      readonly chillMostMin: number;
    };

/** What each kind of task answers. Null: the engine refused the problem. */
export interface HeatAnswers {
  readonly solve: PlanOutcome | null;
  readonly bands: PlanBands | null;
  readonly depths: readonly DepthRow[];
  readonly pull: CarryOverPull | null;
  readonly live: LiveForecast | null;
}

export type HeatAnswer = HeatAnswers[keyof HeatAnswers];

/**
 * Does a task piece by piece, each step telling how much is done, 0–1. The one place that does it: on the page, in a
 * worker and in Node the answer is the same.
 */
export function* runTask(task: HeatTask): Generator<number, HeatAnswer> {
  switch (task.kind) {
    case 'solve': {
      const { problem, tier, pictureEveryMin } = task;
      return solvePlan(problem, { tier, pictureEveryMin });
    }
    case 'bands': {
      const { problem, draws, seed, chillMostMin } = task;
      return yield* planBands(problem, { draws, random: evenNumbers(seed), chillMostMin });
    }
    case 'depths':
      return yield* depthRows(task.problems);
    case 'live': {
      const { cook, draws, seed, chillMostMin } = task;
      return yield* liveForecast(cook, { draws, random: evenNumbers(seed), chillMostMin });
    }
    case 'pull':
      return pullForCarryOver(task.problem);
  }
}

/** Even numbers in 0–1: the minimal standard generator of Park and Miller. */
function evenNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

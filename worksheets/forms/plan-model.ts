import * as say from '#words/forms/plan-model.ts';
import type { StepId } from '../words/haccp.ts';

/** What the batch knows of the plan. Null prints as a box to write in. */
export interface PlanSheet {
  readonly product: string | null;
  readonly family: string | null;
  readonly kitchen: string | null;
  readonly saltOnWater: string | null;
  readonly nitrite: string | null;
  readonly packing: string | null;
  readonly users: string | null;
  /** Dried or fermented: the draft does not cover it. */
  readonly beyond: boolean;
  readonly steps: readonly PlanStep[];
}

export interface PlanStep {
  readonly id: StepId;
  /** Lines of the critical limit; null: nobody knows it here. */
  readonly limit: readonly string[] | null;
  /** What the empty limit is written in. */
  readonly unit: string;
}

const STEPS: readonly (readonly [StepId, string])[] = [
  ['receive', '≤ ____ °C'],
  ['cure', '≤ ____ mg/kg'],
  ['grind', '≤ ____ °C'],
  ['allergens', ''],
  ['cook', say.cFor],
  ['cool', say.toCInH],
  ['handle', ''],
  ['store', say.cDays],
  ['pack', say.daysAtC],
  ['sell', ''],
];

/** The steps with the limits that are known. A step left out of `known` is a box; one that is `false` is not printed. */
export function planSteps(known: Partial<Record<StepId, readonly string[] | null | false>>): PlanStep[] {
  return STEPS.flatMap(([id, unit]) => {
    const limit = known[id];
    return limit === false ? [] : [{ id, unit, limit: limit ?? null }];
  });
}

/** The plan nobody has filled. */
export const BLANK_PLAN: PlanSheet = {
  product: null,
  family: null,
  kitchen: null,
  saltOnWater: null,
  nitrite: null,
  packing: null,
  users: null,
  beyond: false,
  steps: planSteps({}),
};

import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { PlanStep, PlanStepKind } from './slice.ts';

/** Hours a step usually takes, least and most. What depends on the kitchen stands nowhere. Common practice, no source. */
const USUAL_HOURS: Readonly<Partial<Record<PlanStepKind, readonly [least: number, most: number]>>> = {
  cure: [12, 48],
  panade: [2, 2],
  temper: [1, 1],
  'press-and-chill': [12, 24],
  // A terrine eats best from the second day to the fourth.
  keep: [24, 72],
};

/** The steps of a cooked terrine in their order. */
export const TERRINE_STEPS: readonly PlanStepKind[] = [
  'receive',
  'trim',
  'cure',
  'panade',
  'temper',
  'grind-and-mix',
  'fill',
  'cook',
  'press-and-chill',
  'keep',
  'slice',
];

/** Durations of a new step: the usual ones marked as defaults, or blank. */
export function usualDuration(kind: PlanStepKind): Pick<PlanStep, 'least' | 'most'> {
  const hours = USUAL_HOURS[kind];
  if (!hours) return { least: blankEntry('min'), most: blankEntry('min') };
  return { least: defaultEntry(`${hours[0]}`, 'h'), most: defaultEntry(`${hours[1]}`, 'h') };
}

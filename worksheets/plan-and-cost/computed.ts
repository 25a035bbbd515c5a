import { derive } from '../state/derived.ts';
import type { PlanComputed } from './compute.ts';

/** What calc makes of the plan on the bench. */
export const $plan = derive<PlanComputed>(async () => (await import('./compute.ts')).computePlan);

import { derive } from '../state/derived.ts';
import type { CookPlanComputed } from './compute.ts';

/** The cook plan on the bench, before it is simulated. */
export const $cookPlan = derive<CookPlanComputed>(async () => (await import('./compute.ts')).loadCookPlan());

import { derive } from '../state/derived.ts';
import type { ChillBudgetComputed } from './compute.ts';

/** What calc makes of the chill of grinding on the bench. */
export const $chillBudget = derive<ChillBudgetComputed>(
  async () => (await import('./compute.ts')).computeChillBudget,
);

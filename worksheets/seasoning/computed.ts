import { derive } from '../state/derived.ts';
import type { SeasoningComputed } from './compute.ts';

/** What calc makes of the seasoning on the bench. */
export const $seasoning = derive<SeasoningComputed>(
  async () => (await import('./compute.ts')).computeSeasoning,
);

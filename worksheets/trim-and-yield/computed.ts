import { derive } from '../state/derived.ts';
import type { YieldComputed } from './compute.ts';

/** What calc makes of the trim tests on the bench. */
export const $yield = derive<YieldComputed>(async () => (await import('./compute.ts')).computeYield);

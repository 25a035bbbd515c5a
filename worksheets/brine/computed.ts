import { derive } from '../state/derived.ts';
import type { BrineComputed } from './compute.ts';

/** What calc makes of the brine on the bench. */
export const $brine = derive<BrineComputed>(async () => (await import('./compute.ts')).computeBrine);

import { derive } from '../state/derived.ts';
import type { CrustComputed } from './compute.ts';

/** What calc makes of the crust on the bench. */
export const $crust = derive<CrustComputed>(async () => (await import('./compute.ts')).computeCrust);

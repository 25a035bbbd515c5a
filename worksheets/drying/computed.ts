import { derive } from '../state/derived.ts';
import type { DryingComputed } from './compute.ts';

/** What calc makes of the drying on the bench. */
export const $drying = derive<DryingComputed>(async () => (await import('./compute.ts')).computeDrying);

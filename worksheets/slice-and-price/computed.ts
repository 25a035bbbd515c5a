import { derive } from '../state/derived.ts';
import type { SlicingComputed } from './compute.ts';

/** What calc makes of the slicing on the bench. */
export const $slicing = derive<SlicingComputed>(async () => (await import('./compute.ts')).computeSlicing);

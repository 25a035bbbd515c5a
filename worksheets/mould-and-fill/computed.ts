import { derive } from '../state/derived.ts';
import type { MouldComputed } from './compute.ts';

/** What calc makes of the moulds on the bench. */
export const $mould = derive<MouldComputed>(async () => (await import('./compute.ts')).computeMould);

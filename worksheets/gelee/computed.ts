import { derive } from '../state/derived.ts';
import type { GeleeComputed } from './compute.ts';

/** What calc makes of the jelly on the bench. */
export const $gelee = derive<GeleeComputed>(async () => (await import('./compute.ts')).computeGelee);

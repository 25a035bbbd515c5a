import { derive } from '../state/derived.ts';
import type { CasingsComputed } from './compute.ts';

/** What calc makes of the casings on the bench. */
export const $casings = derive<CasingsComputed>(async () => (await import('./compute.ts')).computeCasings);

import { derive } from '../state/derived.ts';
import type { CureComputed } from './compute.ts';

/** What calc makes of salt and nitrite on the bench. */
export const $cure = derive<CureComputed>(async () => (await import('./compute.ts')).loadCure());

import { derive } from '../state/derived.ts';
import type { CookComputed } from './compute.ts';

/** What calc makes of the cook on the bench. */
export const $cook = derive<CookComputed>(async () => (await import('./compute.ts')).loadCook());

import { derive } from '../state/derived.ts';
import type { ChillComputed } from './compute.ts';

/** What calc makes of the press and the chill on the bench. */
export const $chill = derive<ChillComputed>(async () => (await import('./compute.ts')).loadChill());

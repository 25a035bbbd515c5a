import { derive } from '../state/derived.ts';
import type { LabelComputed } from './compute.ts';

/** What calc makes of the label on the bench. */
export const $label = derive<LabelComputed>(async () => (await import('./compute.ts')).loadLabel());

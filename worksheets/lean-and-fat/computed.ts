import { derive } from '../state/derived.ts';
import type { BlendComputed } from './compute.ts';

/** What calc makes of the blend on the bench. */
export const $blend = derive<BlendComputed>(async () => (await import('./compute.ts')).loadBlend());

import { derive } from '../state/derived.ts';
import type { DryCureComputed } from './compute.ts';

/** What calc makes of the dry cure on the bench. */
export const $dryCure = derive<DryCureComputed>(async () => (await import('./compute.ts')).computeDryCure);

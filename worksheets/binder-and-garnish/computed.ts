import { derive } from '../state/derived.ts';
import type { BinderComputed } from './compute.ts';

/** What calc makes of binders and garnish on the bench. */
export const $binder = derive<BinderComputed>(async () => (await import('./compute.ts')).loadBinder());

import { derive } from '../state/derived.ts';
import type { SheetComputed } from './compute.ts';

/** The whole batch assessed, and the sheet set from it. */
export const $sheet = derive<SheetComputed>(async () => (await import('./compute.ts')).loadCompute());

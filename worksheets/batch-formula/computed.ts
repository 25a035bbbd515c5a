import { derive } from '../state/derived.ts';
import type { FormulaComputed } from './compute.ts';

/** What calc makes of the formula on the bench. */
export const $formula = derive<FormulaComputed>(async () => (await import('./compute.ts')).loadFormula());

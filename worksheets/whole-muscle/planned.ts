import { plainText } from '@larderwright/calc/quantities';
import type { Filled } from '../batch-sheet/sheet-model.ts';

/** Grams of a plan, which are whole steps of the scale, without the noise of arithmetic. */
export function stepText(massG: number): string {
  return `${plainText(Number(massG.toFixed(3)))}\u00a0g`;
}

/** The same in a box of a card. */
export function plannedGrams(massG: number | null | undefined): Filled | null {
  return massG === null || massG === undefined ? null : { text: stepText(massG), flag: 'W' };
}

import type {
  DeclaredQuantity,
  LabelSlice,
  LabelValues,
  ListedIngredient,
  Market,
} from '@larderwright/calc/label';
import { formatQuantity } from '@larderwright/calc/quantities';
import * as say from '#words/label/label-text.ts';
import { limitTemp } from '../words/limit-temp.ts';

/** "Keep at 3 °C (37 °F) or below", rounded down on the other scale. */
export function storeLine(slice: LabelSlice, { storeAtC }: LabelValues): string {
  if (storeAtC === null) return '';
  const typedF = slice.storeAt.unit === 'F';
  const limit = typedF
    ? { value: Math.round((storeAtC * 9) / 5 + 32), unit: 'F' as const }
    : { value: storeAtC, unit: 'C' as const };
  const { text } = limitTemp(limit, 'maximum');
  return say.atOrBelow(storeAtC <= -12 ? say.keepFrozen : say.keepRefrigerated, text);
}

/** A net weight, never more than there is: rounded down. Ounces first where they are asked for. */
export function netText(netG: number, market: Market | null): string {
  const grams = formatQuantity('mass', netG, { decimals: 0, rounding: 'down', withUnit: true });
  const ounces = formatQuantity('mass', netG, { unit: 'oz', decimals: 1, rounding: 'down', withUnit: true });
  return market === 'us' ? say.netWt(ounces, grams) : grams;
}

/** A declared quantity in words. */
export function quantityText({ declare, state }: DeclaredQuantity): string {
  const figure = declare.as === 'percent' ? `${declare.figure} %` : say.gUsedFor100G(declare.figure);
  return state === 'settled' ? figure : say.cannotTellAtMost(figure);
}

/** A list as one text; allergens in capitals, for paper. */
export function listText(list: readonly ListedIngredient[]): string {
  return list
    .map(({ text }) =>
      text.map((part) => (part.allergen ? part.text.toLocaleUpperCase('en') : part.text)).join(''),
    )
    .join(', ');
}

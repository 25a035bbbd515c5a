import type { LabelPart } from '@larderwright/calc/label';
import * as say from '#words/label/field-names.ts';

const NAMES: Readonly<Record<string, string>> = {
  'label.name': say.theNameOfTheFood,
  'label.loss': say.whatWasLostInTheCook,
  'label.drainedFat': say.theFatPouredOff,
  'label.alcohol': say.whatBecameOfTheAlcohol,
  'label.serving': say.theServing,
  'label.netWeight': say.theNetWeightOfAPack,
  'label.cookedOn': say.theDayOfTheCook,
  'label.life': say.theLifeFromTheCook,
  'label.storeAt': say.theTemperatureToKeepAt,
  'product.finished': say.theFinishedWeight,
  'formula.lines': say.theWeightOfEveryIngredient,
};

/** What a blank input is called in the middle of a sentence. */
export function nameOfField(field: string, parts: readonly LabelPart[]): string {
  const lineId = /^label\.lines\.([^.]+)\.figures$/.exec(field)?.[1];
  if (lineId !== undefined) {
    const part = parts.find(({ id }) => id === lineId);
    return say.nutritionOf(part?.ownName || say.anIngredient);
  }
  return NAMES[field] ?? say.anInput;
}

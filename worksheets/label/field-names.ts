import type { LabelPart } from '@larderwright/calc/label';

const NAMES: Readonly<Record<string, string>> = {
  'label.name': 'the name of the food',
  'label.loss': 'what was lost in the cook',
  'label.drainedFat': 'the fat poured off',
  'label.alcohol': 'what became of the alcohol',
  'label.serving': 'the serving',
  'label.netWeight': 'the net weight of a pack',
  'label.cookedOn': 'the day of the cook',
  'label.life': 'the life from the cook',
  'label.storeAt': 'the temperature to keep at',
  'product.finished': 'the finished weight',
  'formula.lines': 'the weight of every ingredient',
};

/** What a blank input is called in the middle of a sentence. */
export function nameOfField(field: string, parts: readonly LabelPart[]): string {
  const lineId = /^label\.lines\.([^.]+)\.figures$/.exec(field)?.[1];
  if (lineId !== undefined) {
    const part = parts.find(({ id }) => id === lineId);
    return `nutrition of ${part?.ownName || 'an ingredient'}`;
  }
  return NAMES[field] ?? 'an input';
}

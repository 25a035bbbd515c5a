import type { SeasoningSlice } from '@larderwright/calc/seasoning';
import * as say from '#words/seasoning/field-names.ts';
import { spiceName } from './row-names.ts';

const FIELDS: Readonly<Record<string, string>> = {
  dose: say.theDoseOf,
  stockTimes: say.howManyBatchesToMixFor,
  parts: say.thePartsOf,
};

/** An input of the seasoning in the middle of a sentence. */
export function seasoningFieldName(field: string, slice: SeasoningSlice): string {
  if (field === 'seasoning.batch') return say.theTotalMix;
  if (field === 'seasoning.scaleReadability') return say.theStepOfTheScale;
  const key = field.slice(field.lastIndexOf('.') + 1);
  const rows = [...slice.blends.flatMap(({ items }) => items), ...slice.loose];
  const row = rows.find(({ id }) => field.includes(`.${id}.`));
  const blend = slice.blends.find(({ id }) => field.includes(`.${id}.`));
  const name = row ? spiceName(row) || say.anUnnamedSpice : blend?.name.trim() || say.anUnnamedBlend;
  return `${FIELDS[key] ?? key} ${name}`;
}

import type { SeasoningSlice } from '@larderwright/calc/seasoning';
import { spiceName } from './row-names.ts';

const FIELDS: Readonly<Record<string, string>> = {
  dose: 'the dose of',
  stockTimes: 'how many batches to mix for, of',
  parts: 'the parts of',
};

/** An input of the seasoning in the middle of a sentence. */
export function seasoningFieldName(field: string, slice: SeasoningSlice): string {
  if (field === 'seasoning.batch') return 'the total mix';
  if (field === 'seasoning.scaleReadability') return 'the step of the scale';
  const key = field.slice(field.lastIndexOf('.') + 1);
  const rows = [...slice.blends.flatMap(({ items }) => items), ...slice.loose];
  const row = rows.find(({ id }) => field.includes(`.${id}.`));
  const blend = slice.blends.find(({ id }) => field.includes(`.${id}.`));
  const name = row ? spiceName(row) || 'an unnamed spice' : blend?.name.trim() || 'an unnamed blend';
  return `${FIELDS[key] ?? key} ${name}`;
}

import { fixedText } from '@larderwright/calc/quantities';
import {
  type SeasoningSlice,
  type SeasoningValues,
  type SeasoningWeight,
  spiceOf,
} from '@larderwright/calc/seasoning';
import type { OwnLine } from '../state/own-lines.ts';
import { spiceName } from './row-names.ts';

/** How the id of a line that this page writes begins; the row's own id follows. */
export const SEASONING_LINE = 'seasoning-';
/** Places below which a scale for spices shows nothing. */
const DECIMALS = 3;

/** What goes into this batch: the scale's steps where it is weighed by itself, else the exact share. */
function gramsText({ massG, toWeighG, onScaleG, weighable }: SeasoningWeight): string | null {
  if (massG === null) return null;
  const byItself = weighable === true && toWeighG === massG && onScaleG !== null;
  return String(Number(fixedText(byItself ? onScaleG : massG, DECIMALS)));
}

/** The seasoning as lines of a formula; null while some weight is unknown or there is none. */
export function seasoningLines(slice: SeasoningSlice, values: SeasoningValues): OwnLine[] | null {
  const rows = [...slice.blends.flatMap(({ items }) => items), ...slice.loose];
  const weights = [...values.blends.flatMap(({ items }) => items), ...values.loose];
  if (weights.length === 0) return null;
  const lines: OwnLine[] = [];
  for (const weight of weights) {
    const row = rows.find(({ id }) => id === weight.id);
    const grams = gramsText(weight);
    if (!row || grams === null) return null;
    if (weight.massG === 0) continue;
    lines.push({
      id: `${SEASONING_LINE}${weight.id}`,
      name: spiceName(row),
      part: 'seasoning',
      ingredientId: spiceOf(weight.spiceId)?.ingredientId ?? null,
      grams,
      declared: { salt: row.salt },
    });
  }
  return lines;
}

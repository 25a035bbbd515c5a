import type { BinderSlice, BinderValues } from '@larderwright/calc/binder';
import { entryValue, fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/binder-and-garnish/to-formula.ts';
import type { OwnLine } from '../state/own-lines.ts';

/** How the id of a line that this page writes begins. */
export const BINDER_LINE = 'binder-';

const text = (massG: number) => String(Number(fixedText(massG, 1)));

/**
 * Panade, egg, cream, binders and garnish as lines of a formula. Steam is taken off the wettest, largest part of the panade,
 * so that its lines weigh what goes into the bowl.
 *
 * @returns null while some weight is unknown
 */
export function binderLines(slice: BinderSlice, values: BinderValues): OwnLine[] | null {
  const panade = panadeLines(slice, values);
  if (panade === null) return null;
  const lines = [...panade];
  const others: readonly [OwnLine['part'], string, string, string | null, number | null][] = [
    ['egg', 'egg', say.egg, slice.eggIngredientId, values.eggG],
    ['liquid', 'cream', say.cream, slice.creamIngredientId, entryValue('mass', slice.cream)],
  ];
  for (const [part, id, name, ingredientId, massG] of others) {
    if (massG === null) return null;
    if (massG > 0) lines.push({ id: `${BINDER_LINE}${id}`, name, part, ingredientId, grams: text(massG) });
  }
  for (const extender of slice.extenders) {
    const massG = entryValue('mass', extender.amount);
    if (massG === null) return null;
    lines.push({ ...lineOf(extender, 'panade'), grams: text(massG) });
  }
  for (const row of slice.garnish) {
    const massG = values.garnish.find(({ lineId }) => lineId === row.id)?.preparedG ?? null;
    if (massG === null) return null;
    lines.push({ ...lineOf(row, 'garnish'), grams: text(massG) });
  }
  return lines;
}

function panadeLines(slice: BinderSlice, { panade }: BinderValues): OwnLine[] | null {
  if (slice.panadeKind === 'none') return [];
  const { rawG, cookedG } = panade;
  if (rawG === null || cookedG === null) return null;
  const parts = slice.panadeParts.map((part) => ({ part, massG: entryValue('mass', part.amount) ?? 0 }));
  const largest = Math.max(...parts.map(({ massG }) => massG));
  const wettest = parts.findIndex(({ massG }) => massG === largest);
  const lines = parts.map(({ part, massG }, place) => ({
    line: lineOf(part, 'panade'),
    massG: place === wettest ? massG - (rawG - cookedG) : massG,
  }));
  // More steam than there was liquid: the weights contradict each other.
  if (lines.some(({ massG }) => massG < 0)) return null;
  return lines.map(({ line, massG }) => ({ ...line, grams: text(massG) }));
}

type Row = BinderSlice['panadeParts'][number] | BinderSlice['garnish'][number];

function lineOf({ id, name, ingredientId, salt, water }: Row, part: OwnLine['part']): Omit<OwnLine, 'grams'> {
  return { id: `${BINDER_LINE}${id}`, name, part, ingredientId, declared: { salt, water } };
}

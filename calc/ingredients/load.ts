import { type IngredientDetails, toDetails } from './details.ts';
import type { Ingredient, PickItem } from './ingredient.ts';
import { readTable } from './read-table.ts';
import { toIngredient, toPickItem } from './to-ingredient.ts';

/** Ids of the kitchen's own rows, which need the small file only. */
const KITCHEN_PREFIX = 'kitchen-';

const kitchen = async () =>
  readTable((await import('./data/kitchen.json', { with: { type: 'json' } })).default);
const names = async () => readTable((await import('./data/names.json', { with: { type: 'json' } })).default);
const composition = async () =>
  readTable((await import('./data/composition.json', { with: { type: 'json' } })).default);

/**
 * Names for a pick list, the kitchen's own rows first. About 8 kB over the wire, no compositions.
 */
export async function loadPickList(): Promise<PickItem[]> {
  const [own, table] = await Promise.all([kitchen(), names()]);
  return [...own, ...table].map(toPickItem);
}

/**
 * Ingredients with their compositions, by id.
 *
 * @param ids the ids wanted; when all are the kitchen's own, the large table is not fetched. Left out: all rows.
 * @returns a map in which unknown ids are simply absent
 */
export async function loadIngredients(ids?: Iterable<string>): Promise<ReadonlyMap<string, Ingredient>> {
  const wanted = ids === undefined ? null : new Set(ids);
  const rows = await kitchen();
  if (wanted === null || [...wanted].some((id) => !id.startsWith(KITCHEN_PREFIX))) {
    const [named, composed] = await Promise.all([names(), composition()]);
    for (const [index, row] of composed.entries()) rows.push({ ...row, ...named[index] });
  }
  const kept = wanted === null ? rows : rows.filter((row) => wanted.has(row.id ?? ''));
  return new Map(kept.map((row) => [row.id ?? '', toIngredient(row)]));
}

/** Everything else the source tells of each row of the large table: about 29 kB, for the reference pages. */
export async function loadIngredientDetails(): Promise<ReadonlyMap<string, IngredientDetails>> {
  const { default: table } = await import('./data/details.json', { with: { type: 'json' } });
  return new Map(readTable(table).map((row) => [row.id ?? '', toDetails(row)]));
}

import type { PickItem } from './ingredient.ts';
import { KITCHEN_SYNONYMS } from './synonyms.ts';

const DEFAULT_LIMIT = 20;

/** Lower case, no accents, one space between words. */
function fold(text: string): string {
  return text
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9.%]+/g, ' ')
    .trim();
}

/** How well one word fits a name: at its start 3, at a word's start 2, by a synonym 1, not at all 0. */
function fit(word: string, name: string): number {
  if (name.startsWith(word)) return 3;
  if (` ${name}`.includes(` ${word}`)) return 2;
  const said = KITCHEN_SYNONYMS.some(
    ([words, written]) =>
      words.includes(word) && written.some((other) => ` ${name}`.includes(` ${fold(other)}`)),
  );
  return said ? 1 : 0;
}

/**
 * Ingredients whose name answers every word typed, in any order, accents and case aside; what is said at the bench
 * finds what the table calls it. Best first, the list's own order among equals. Nothing typed finds nothing.
 *
 * @param limit most answers to give
 */
export function searchIngredients(
  list: readonly PickItem[],
  text: string,
  limit: number = DEFAULT_LIMIT,
): PickItem[] {
  const words = fold(text.slice(0, 80)).split(' ').filter(Boolean);
  if (words.length === 0) return [];
  const found: { item: PickItem; score: number }[] = [];
  for (const item of list) {
    const name = fold(`${item.name} ${item.category}`);
    const fits = words.map((word) => fit(word, name));
    if (fits.every((score) => score > 0))
      found.push({ item, score: fits.reduce((sum, score) => sum + score, 0) });
  }
  return found
    .sort((a, b) => b.score - a.score)
    .slice(0, limit)
    .map(({ item }) => item);
}

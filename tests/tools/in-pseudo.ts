/**
 * A language nobody speaks: English in brackets, with its vowels doubled. What shows without brackets stands outside
 * the catalogue; what overflows has no room for a longer language.
 */
const OPEN = '⟦';
const CLOSE = '⟧';

/** Properties of a table of words that are no words. */
const NO_WORDS = new Set(['value', 'path', 'id', 'unit', 'caution', 'severity']);

/** About two fifths longer. What is bracketed already stays as it is. */
function lengthened(text: string): string {
  return text
    .split(/(⟦.*⟧)/)
    .map((part) => (part.startsWith(OPEN) ? part : part.replaceAll(/[aeiouy]/gi, '$&$&')))
    .join('');
}

/** A text, a sentence with values, or a table of both, in the language nobody speaks. */
export function inPseudo<Words>(words: Words): Words;
export function inPseudo(words: unknown): unknown {
  if (typeof words === 'string') return /\p{L}{2}/u.test(words) ? OPEN + lengthened(words) + CLOSE : words;
  if (typeof words === 'function') return (...values: unknown[]) => inPseudo(words(...values));
  if (Array.isArray(words)) return words.map((word: unknown) => inPseudo(word));
  if (words === null || typeof words !== 'object' || 'props' in words) return words;
  return Object.fromEntries(
    Object.entries(words).map(([name, word]) => [name, NO_WORDS.has(name) ? word : inPseudo(word)]),
  );
}

import { SYNONYMS } from '../../../content/synonyms.ts';

/** So many ways of saying one query are tried at most. */
const MOST_VARIANTS = 5;

/** Words that ask and do not tell. Left out only where the whole query finds nothing. */
const FILLER = new Set(
  (
    'a about an and any are at be can could did do does for from get go got has have how i if in into is it its long me my ' +
    'of off on or our out safe should so some that the their then there these they this to too up was we went what when ' +
    'where which why will with you your'
  ).split(' '),
);

/** Letters without their accents, small, single spaces. */
export function fold(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().replace(/\s+/g, ' ').trim();
}

/**
 * A query as the index writes things: temperatures as `155 °F`, a range or an amount apart from its unit.
 * @example readQuery('155F') // '155 °f'
 */
export function readQuery(typed: string): string {
  return fold(typed)
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(
      /(\d)\s*(?:°|º|deg(?:rees?)?\.?)?\s*(f|fahrenheit|c|celsius)\b/g,
      (_, digit, scale) => `${digit} °${scale[0]}`,
    )
    .replace(/(\d)\s*(ppm|mg\/kg|mm|kg|g|kpa|min|h|%)(?![a-z])/g, '$1 $2')
    .replace(/[?!"“”]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/**
 * The query itself and the same with kitchen synonyms put in, one at a time.
 * @param query as `readQuery` gives it
 */
export function variantsOf(query: string): string[] {
  const variants = [query];
  for (const group of SYNONYMS) {
    // The longest name found is the one meant: "black pudding" is not "pudding".
    const named = [...group].sort((a, b) => b.length - a.length).find((name) => holds(query, name));
    if (named === undefined) continue;
    for (const other of group)
      if (other !== named && variants.length < MOST_VARIANTS) variants.push(replaceWord(query, named, other));
  }
  return [...new Set(variants)];
}

/** The query without words that only ask; the query itself where nothing would be left. */
export function withoutFiller(query: string): string {
  const kept = query.split(' ').filter((word) => !FILLER.has(word));
  return kept.length === 0 ? query : kept.join(' ');
}

/** The query with each of its words left out in turn. Empty for a single word. */
export function withoutOne(query: string): string[] {
  const words = query.split(' ');
  return words.length < 2 ? [] : words.map((_, at) => words.filter((_, other) => other !== at).join(' '));
}

function holds(query: string, name: string): boolean {
  return pattern(name).test(query);
}

function replaceWord(query: string, name: string, other: string): string {
  return query.replace(pattern(name), other);
}

/** A name as whole words. Names hold letters, spaces and hyphens alone. */
function pattern(name: string): RegExp {
  return new RegExp(`(?<![\\p{L}\\p{N}])${name}(?![\\p{L}\\p{N}])`, 'u');
}

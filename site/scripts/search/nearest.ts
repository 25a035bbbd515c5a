/** A word is taken for a slip of another up to so many changed, lost, added or swapped letters. */
const MOST_SLIPS = 2;
/** Shorter words are too near each other to guess at. */
const SHORTEST = 4;

/**
 * Letters to change, add, take out or swap with their neighbour to make one word of the other.
 * @returns more than `most` as soon as it is sure to be more
 */
export function slipsBetween(a: string, b: string, most = MOST_SLIPS): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      row.push(least);
    }
    if (Math.min(...row) > most) return most + 1;
    before = last;
    last = row;
  }
  return Math.min(last[b.length] ?? most + 1, most + 1);
}

/**
 * The word of the list that a mistyped one was meant for.
 * @param words of the index, the commonest first
 * @returns null where none is near; the word itself where it is in the list
 */
export function nearestWord(word: string, words: readonly string[]): string | null {
  if (words.includes(word)) return word;
  if (word.length < SHORTEST || /\d/.test(word)) return null;
  const most = word.length < 6 ? 1 : MOST_SLIPS;
  let best: string | null = null;
  let least = most + 1;
  for (const candidate of words) {
    // The first letter is rarely wrong, and a wrong guess there is the worst.
    const slips = slipsBetween(word, candidate, most) + (candidate[0] === word[0] ? 0 : 0.5);
    if (slips < least) {
      least = slips;
      best = candidate;
    }
  }
  return best;
}

/**
 * A query with each unknown word replaced by its nearest, and left out where none is near. The last word may still
 * be in the typing, so the beginning of a known word is known. Short words and numbers stay.
 */
export function corrected(query: string, words: readonly string[]): string {
  const isKnown = (word: string) =>
    word.length < SHORTEST ||
    !/^[a-z]+$/.test(word) ||
    words.some((one) => one.startsWith(word)) ||
    words.some((one) => one.startsWith(stem(word)));
  return query
    .split(' ')
    .map((word) => (isKnown(word) ? word : (nearestWord(word, words) ?? '')))
    .filter((word) => word !== '')
    .join(' ');
}

/** A word without a common ending, if enough is left: the index finds `green` by `greening` as well. */
function stem(word: string): string {
  const short = word.replace(/(?:ings?|ed|ers?|ly|e?s)$/, '');
  return short.length < SHORTEST ? word : short;
}

/**
 * The words of the index as they are stored: in the order of the alphabet, each as the number of letters it shares with
 * the word before and the letters that follow; on a second line how common each is, one digit a word.
 * @returns the words, the commonest first
 */
export function readWordList(stored: string): string[] {
  const [coded = '', ranks = ''] = stored.split('\n');
  let before = '';
  const words = Array.from(coded.matchAll(/(\d)([a-z]*)/g), ([, shared, rest = '']) => {
    before = before.slice(0, Number(shared)) + rest;
    return before;
  });
  const rankOf = new Map(words.map((word, at) => [word, Number(ranks[at])]));
  return words.sort((a, b) => (rankOf.get(b) ?? 0) - (rankOf.get(a) ?? 0));
}

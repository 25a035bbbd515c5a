import { describe, expect, it } from 'vitest';
import { readWordList } from '../../site/scripts/search/word-list.ts';

describe('the words of the index', () => {
  it('are read back from what they share with the word before, the commonest first', () => {
    // brine, brines, brining; the second is the commonest.
    expect(readWordList('0brine5s3ning\n051')).toEqual(['brines', 'brining', 'brine']);
  });

  it('are none where nothing came', () => {
    expect(readWordList('')).toEqual([]);
  });
});

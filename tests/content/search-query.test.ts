import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SYNONYMS } from '../../content/synonyms.ts';
import { corrected, nearestWord, slipsBetween } from '../../site/scripts/search/nearest.ts';
import { fold, readQuery, variantsOf, withoutFiller, withoutOne } from '../../site/scripts/search/query.ts';
import { mergeHits, rowsApart } from '../../site/scripts/search/rank.ts';

describe('readQuery', () => {
  it.each([
    ['155F', '155 °f'],
    ['155 °F', '155 °f'],
    ['68 C', '68 °c'],
    ['68deg c', '68 °c'],
    ['57,2 °C', '57.2 °c'],
    ['150ppm', '150 ppm'],
    ['290mm mould', '290 mm mould'],
    ['Pâté?', 'pate'],
    ['70 for 2 minutes', '70 for 2 minutes'],
    ['C18', 'c18'],
  ])('%s → %s', (typed, read) => {
    expect(readQuery(typed)).toBe(read);
  });
});

describe('variantsOf', () => {
  it('puts each synonym in, in both directions', () => {
    expect(variantsOf('water bath too hot')).toContain('bain-marie too hot');
    expect(variantsOf('bain-marie too hot')).toContain('water bath too hot');
    expect(variantsOf('crepine')).toContain('caul');
    expect(variantsOf('caul')).toContain('crepine');
  });

  it('takes the longest name, and whole words only', () => {
    expect(variantsOf('black pudding')).toContain('blood pudding');
    expect(variantsOf('scoring')).toEqual(['scoring']);
  });

  it('keeps the query first and tries few', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...SYNONYMS.flat()), { minLength: 1, maxLength: 6 }), (words) => {
        const query = words.join(' ');
        const variants = variantsOf(query);
        expect(variants[0]).toBe(query);
        expect(variants.length).toBeLessThanOrEqual(5);
      }),
    );
  });

  it('knows its own words only as a query is written', () => {
    expect(SYNONYMS.flat().filter((word) => fold(word) !== word)).toEqual([]);
  });
});

describe('words that only ask', () => {
  it('are left out, unless nothing else is there', () => {
    expect(withoutFiller('is it safe if pink')).toBe('pink');
    expect(withoutFiller('how long')).toBe('how long');
    expect(withoutOne('a b c')).toEqual(['b c', 'a c', 'a b']);
    expect(withoutOne('a')).toEqual([]);
  });
});

describe('slipsBetween', () => {
  it.each([
    ['sausage', 'suasage', 1],
    ['galantine', 'galatine', 1],
    ['terrine', 'terrine', 0],
    ['confit', 'comfort', 3],
  ])('%s and %s: %i', (a, b, slips) => {
    expect(slipsBetween(a, b)).toBe(slips);
  });

  it('is the same both ways, and nothing for a word and itself', () => {
    const word = fc.stringMatching(/^[a-e]{1,7}$/);
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(slipsBetween(a, b)).toBe(slipsBetween(b, a));
        expect(slipsBetween(a, a)).toBe(0);
      }),
    );
  });
});

describe('nearestWord', () => {
  const words = ['sausage', 'terrine', 'galantine', 'salt'];

  it('finds the word meant, and leaves a known one', () => {
    expect(nearestWord('suasage', words)).toBe('sausage');
    expect(nearestWord('salt', words)).toBe('salt');
  });

  it('guesses at nothing short, numbered or far', () => {
    expect(nearestWord('sal', words)).toBeNull();
    expect(nearestWord('155', words)).toBeNull();
    expect(nearestWord('chocolate', words)).toBeNull();
  });

  it('puts a query right word by word', () => {
    expect(corrected('suasage salt', words)).toBe('sausage salt');
    expect(corrected('sausages 155 °f', words)).toBe('sausages 155 °f');
  });

  it('knows a word by its stem', () => {
    expect(corrected('salting terrines', ['salt', 'terrine'])).toBe('salting terrines');
  });

  it('takes the beginning of a word for one that is being typed', () => {
    expect(corrected('gala', words)).toBe('gala');
  });

  it('leaves out what is like nothing', () => {
    expect(corrected('zzqqxx salt', words)).toBe('salt');
    expect(corrected('zzqqxx', words)).toBe('');
  });
});

describe('mergeHits', () => {
  const hit = (id: string, score: number) => ({ id, score });

  it('keeps each once, at its best, a synonym for a little less', () => {
    const merged = mergeHits([[hit('a', 10)], [hit('b', 10), hit('a', 20)]]);
    expect(merged).toEqual([hit('a', 18), hit('b', 9)]);
  });
});

describe('rowsApart', () => {
  it('lets two rows among the first, and loses or doubles none', () => {
    const ids = ['r1', 'r2', 'r3', 'p1', 'r4', 'p2', 'p3', 'p4', 'p5', 'p6', 'p7'];
    const hits = ids.map((id, at) => ({ id, score: 100 - at }));
    const apart = rowsApart(hits, new Set(['r1', 'r2', 'r3', 'r4']));
    expect(apart.slice(0, 8).map(({ id }) => id)).toEqual(['r1', 'r2', 'p1', 'p2', 'p3', 'p4', 'p5', 'p6']);
    expect(apart.map(({ id }) => id).sort()).toEqual([...ids].sort());
  });
});

import { describe, expect, it } from 'vitest';
import { readExcerpt } from '../../site/scripts/search/excerpt.ts';
import { cautionsFirst } from '../../site/scripts/search/rank.ts';

const hit = (id: string, score: number) => ({ id, score });
const order = (hits: { id: string }[]) => hits.map(({ id }) => id).join(' ');

describe('cautionsFirst', () => {
  it('puts a caution that matches above prose that scores more', () => {
    const hits = [hit('page', 10), hit('caution', 6), hit('other', 2)];
    expect(order(cautionsFirst(hits, new Set(['caution']), new Set()))).toBe('caution page other');
  });

  it('puts a stop before a caution of a lower level', () => {
    const hits = [hit('high', 10), hit('stop', 7)];
    expect(order(cautionsFirst(hits, new Set(['high', 'stop']), new Set(['stop'])))).toBe('stop high');
  });

  it('leaves a caution that hardly matches where it is', () => {
    const hits = [hit('page', 10), hit('caution', 1)];
    expect(order(cautionsFirst(hits, new Set(['caution']), new Set(['caution'])))).toBe('page caution');
  });

  it('puts no more than two in front, and loses or doubles none', () => {
    const hits = [hit('page', 10), ...['a', 'b', 'c', 'd'].map((id) => hit(id, 9))];
    const sorted = cautionsFirst(hits, new Set(['a', 'b', 'c', 'd']), new Set());
    expect(order(sorted)).toBe('a b page c d');
  });

  it('takes an empty list', () => {
    expect(cautionsFirst([], new Set(), new Set())).toEqual([]);
  });
});

describe('readExcerpt', () => {
  it('tells what matched from what did not', () => {
    expect(readExcerpt('keep <mark>pink</mark> salt')).toEqual([
      { text: 'keep ', matched: false },
      { text: 'pink', matched: true },
      { text: ' salt', matched: false },
    ]);
  });

  it('hands markup on as letters', () => {
    expect(readExcerpt('&lt;img onerror=&quot;x&quot;&gt; &amp;lt;')).toEqual([
      { text: '<img onerror="x"> &lt;', matched: false },
    ]);
  });

  it('leaves a mark that never closes as letters', () => {
    expect(readExcerpt('a <mark>b')).toEqual([{ text: 'a <mark>b', matched: false }]);
  });
});

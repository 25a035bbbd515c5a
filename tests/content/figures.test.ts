import { describe, expect, it } from 'vitest';
import { figureParts, figurePlain } from '../../content/figures/figure-text.ts';
import { plainWords, readWords } from '../../content/words.ts';

const mark = 'common-practice' as const;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a figure in words', () => {
  it('shows a range with one unit, and °F beside °C', () => {
    const { amount, beside } = figureParts({ value: [75, 82], unit: 'C', mark });
    expect([plain(amount), plain(beside)]).toEqual(['75–82 °C', '167–180 °F']);
  });

  it('rounds the °F of a ceiling down and of a floor up', () => {
    // 4 °C = 39.2 °F and 71 °C = 159.8 °F, by °F = 1.8 °C + 32 (derived).
    expect(plain(figurePlain({ value: 4, unit: 'C', bound: 'at-most', mark }))).toBe(
      '4 °C (39 °F) or colder',
    );
    expect(plain(figurePlain({ value: 71, unit: 'C', bound: 'at-least', mark }))).toBe(
      '71 °C (160 °F) or hotter',
    );
  });

  it('keeps a whole degree that converts exactly', () => {
    // 5 °C = 41 °F and 60 °C = 140 °F exactly (derived).
    expect(plain(figurePlain({ value: 5, unit: 'C', bound: 'at-most', mark }))).toBe(
      '5 °C (41 °F) or colder',
    );
    expect(plain(figurePlain({ value: 60, unit: 'C', bound: 'at-least', mark }))).toBe(
      '60 °C (140 °F) or hotter',
    );
  });

  it('converts a difference without the offset', () => {
    expect(plain(figureParts({ value: 1, unit: 'dC', mark }).beside)).toBe('1.8 °F');
  });

  it('joins a range below zero with a word, so that no minus reads as a dash', () => {
    expect(plain(figureParts({ value: [-4, -2], unit: 'C', mark }).amount)).toBe('−4 to −2 °C');
  });
});

describe('words of the data files', () => {
  it('fill in the figure named', () => {
    expect(plain(plainWords('Store at {chill-limit}.'))).toBe('Store at 5 °C (41 °F) or colder.');
  });

  it('refuse a figure that is not there', () => {
    expect(() => readWords('Store at {chil-limit}.')).toThrow('names figure {chil-limit}');
  });
});

import { describe, expect, it } from 'vitest';
import { type Entry, median, readCollection, sentencesIn, textsIn, wordCount } from './read-content.ts';

/** Longest median sentence a tired cook should meet, words. House rule. */
const MEDIAN_WORDS = 18;
/** Longest single sentence, words. House rule. */
const LONGEST_WORDS = 40;

/** A number with its unit typed into prose, where a figure should be named. */
const BARE_NUMBER = /\d\s?(?:°C|°F|mm|cm|kg|g|mg|mL|kPa|%|min|minutes|hours|h|days)(?![\w-])/;
const UNFINISHED = /\b(?:TODO|TBD|FIXME|lorem|placeholder|coming soon)\b/i;

const techniques = readCollection('techniques');
const data = ['cautions', 'defects'].flatMap(readCollection);

function proseOf({ data: fields, body }: Entry): string {
  const {
    searchWords: _,
    sources,
    basis,
    cautions,
    defects,
    worksheets,
    standing,
    prerequisites,
    ...spoken
  } = fields;
  return [...textsIn(spoken), body].join('\n\n');
}

describe.each(techniques)('$place', (entry) => {
  const lengths = sentencesIn(proseOf(entry)).map(wordCount);

  it('has short sentences', () => {
    expect(lengths.length).toBeGreaterThan(40);
    expect(median(lengths)).toBeLessThanOrEqual(MEDIAN_WORDS);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(LONGEST_WORDS);
  });

  it('has a method, and every step says what shows that it worked', () => {
    const [, method = ''] = /<Method>(.*?)<\/Method>/s.exec(entry.body) ?? [];
    const steps = method.match(/^\d+\. /gm) ?? [];
    expect(steps.length).toBeGreaterThan(4);
    expect(method.match(/<Sign>/g)).toHaveLength(steps.length);
  });

  it('says what is needed and why it works', () => {
    expect(entry.body).toMatch(/^## What you need$/m);
    expect(entry.body).toMatch(/^## Why it works$/m);
  });

  it('has every worksheet it names in its text', () => {
    const named = Array.isArray(entry.data.worksheets) ? entry.data.worksheets : [];
    expect(named).not.toEqual([]);
    for (const id of named) expect(entry.body).toContain(`<WorksheetHere id="${id}" />`);
  });

  it('types no number with a unit: it names a figure', () => {
    expect(entry.body.replace(/<[^>]+>/g, '').match(BARE_NUMBER)?.[0]).toBeUndefined();
  });

  it('uses no directive, which would vanish from the page', () => {
    expect(entry.body).not.toMatch(/^\s*:::/m);
  });
});

describe.each(data)('$place', (entry) => {
  const prose = proseOf(entry);

  it('has short sentences', () => {
    const lengths = textsIn(entry.data).flatMap(sentencesIn).map(wordCount);
    expect(median(lengths)).toBeLessThanOrEqual(MEDIAN_WORDS);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(LONGEST_WORDS);
  });

  it('types no number with a unit: it names a figure', () => {
    expect(prose.match(BARE_NUMBER)?.[0]).toBeUndefined();
  });
});

it.each([...techniques, ...data])('$place is finished', (entry) => {
  expect(proseOf(entry)).not.toMatch(UNFINISHED);
});

it('no two pages share a paragraph', () => {
  const seen = new Map<string, string>();
  const shared: string[] = [];
  for (const { place, body } of techniques) {
    const paragraphs = body.split(/\n\s*\n/).map((p) => p.trim());
    for (const paragraph of paragraphs.filter((p) => p.length > 60)) {
      const first = seen.get(paragraph);
      if (first) shared.push(`${first} and ${place}: ${paragraph.slice(0, 60)}`);
      seen.set(paragraph, place);
    }
  }
  expect(shared).toEqual([]);
});

it('curing salt is never given in spoons, cups, ounces or pinches as an amount', () => {
  const amounts = /\d\s?(?:tsp|tbsp|teaspoons?|tablespoons?|cups?|oz|ounces?|pinch(?:es)?)\b/i;
  expect(
    [...techniques, ...data].filter((entry) => amounts.test(proseOf(entry))).map(({ place }) => place),
  ).toEqual([]);
});

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { bareNumbersIn } from './bare-number.ts';
import { type Entry, median, readCollection, sentencesIn, textsIn, wordCount } from './read-content.ts';

/** Longest median sentence a tired cook should meet, words. House rule. */
const MEDIAN_WORDS = 18;
/** Longest single sentence, words. House rule. */
const LONGEST_WORDS = 40;

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
    expect(bareNumbersIn(proseOf(entry))).toEqual([]);
  });

  it('uses no directive, which would vanish from the page', () => {
    expect(entry.body).not.toMatch(/^\s*:::/m);
  });
});

describe.each(data)('$place', (entry) => {
  it('has short sentences', () => {
    const lengths = textsIn(entry.data).flatMap(sentencesIn).map(wordCount);
    expect(median(lengths)).toBeLessThanOrEqual(MEDIAN_WORDS);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(LONGEST_WORDS);
  });

  it('types no number with a unit: it names a figure', () => {
    expect(bareNumbersIn(proseOf(entry))).toEqual([]);
  });
});

it.each(['tables', 'worksheets'].flatMap(readCollection))(
  '$place types no number with a unit: it names a figure',
  (entry) => {
    expect(bareNumbersIn(proseOf(entry))).toEqual([]);
  },
);

it('the glossary types no number with a unit', () => {
  const glossary: Record<string, { searchWords?: unknown; also?: unknown }> = parse(
    readFileSync(join(import.meta.dirname, '../../content/glossary.yaml'), 'utf8'),
  );
  const said = Object.values(glossary).flatMap(({ searchWords: _, also: __, ...term }) => textsIn(term));
  expect(said.length).toBeGreaterThan(150);
  expect(said.flatMap(bareNumbersIn)).toEqual([]);
});

describe('a number typed into prose', () => {
  // Invented sentences.
  it.each([
    ['Hold it at 70 °C.', '70 °C'],
    ['Hold it at 68C.', '68C'],
    ['Core of 63–68 °C.', '63–68 °C'],
    ['Between 155 F and more.', '155 F'],
    ['Chill within two hours.', 'two hours'],
    ['Wait 10 minutes.', '10 minutes'],
    ['Wait ten minutes.', 'ten minutes'],
    ['After half an hour it is out.', 'half an hour'],
    ['Keep it for three to four days.', 'three to four days'],
    ['No deeper than 75 millimetres.', '75 millimetres'],
    ['No deeper than 7.5cm.', '7.5cm'],
    ['Weigh 2,5 g of it.', '2,5 g'],
    ['At most 120 ppm.', '120 ppm'],
    ['At most 120 mg/kg.', '120 mg'],
    ['It is 1½ kg.', '1½ kg'],
    ['It is eighty per cent.', 'eighty per cent'],
    ['At 30 % fat.', '30 %'],
    ['A 10-minute hold.', '10-minute'],
    ['Add 2 L of stock.', '2 L'],
    ['Press with 0.7 kPa.', '0.7 kPa'],
  ] as const)('is found in “%s”', (sentence, found) => {
    expect(bareNumbersIn(sentence)[0]).toBe(found);
  });

  it.each([
    'Hold it at <Fig id="hev-temp" /> for <Fig id="hev-time" />.',
    'Store at {chill-limit}, 3 of them.',
    'Two people sign. One takes the 2 pans.',
    'C10 and 9 CFR 424.21(c) say so. See [step 3](/technique/x-3-m/).',
    'Mould 2 goes in first.',
  ])('is not seen in “%s”', (sentence) => {
    expect(bareNumbersIn(sentence)).toEqual([]);
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

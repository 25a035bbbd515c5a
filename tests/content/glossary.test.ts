import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readCollection, wordCount } from './read-content.ts';

interface Entry {
  term: string;
  french?: string;
  everyday?: string;
  also?: string[];
  means: string;
  see?: string[];
}
const glossary: Record<string, Entry> = parse(
  readFileSync(join(import.meta.dirname, '../../content/glossary.yaml'), 'utf8'),
);
const entries = Object.entries(glossary);

const KEYS = ['term', 'french', 'everyday', 'also', 'means', 'see', 'link', 'searchWords'];

it('has no key that is not a field, which a comma makes of a word', () => {
  expect(
    entries.flatMap(([id, entry]) =>
      Object.keys(entry)
        .filter((key) => !KEYS.includes(key))
        .map((key) => `${id}: ${key}`),
    ),
  ).toEqual([]);
});

it('holds at least 150 words', () => {
  expect(entries.length).toBeGreaterThanOrEqual(150);
});

it('gives every French word its plain one, and every word one sentence', () => {
  for (const [id, { term, french, means }] of entries) {
    if (french) expect(term, id).not.toBe(french);
    expect(means, id).toMatch(/^[A-Z].*[.]$/);
    expect(means.split(/[.!?]\s/).length, id).toBe(1);
    expect(wordCount(means), id).toBeLessThanOrEqual(30);
  }
});

it('gives no name to two words', () => {
  const names = entries.flatMap(([, { term, french, also = [] }]) =>
    [term, french, ...also].filter((name) => name !== undefined).map((name) => name.toLowerCase()),
  );
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});

describe('where words lead', () => {
  const known = new Set(
    Object.entries({
      technique: 'techniques',
      caution: 'cautions',
      defect: 'defects',
      table: 'tables',
    }).flatMap(([kind, folder]) => readCollection(folder).map(({ id }) => `${kind}/${id}`)),
  );

  it('exists', () => {
    expect(entries.flatMap(([, { see = [] }]) => see).filter((path) => !known.has(path))).toEqual([]);
  });
});

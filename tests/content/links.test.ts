import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SOURCES } from '@larderwright/calc/sources';
import { describe, expect, it } from 'vitest';
import { describeDangling, findDangling } from '../../content/check-links.ts';
import { examples } from '../../content/examples/index.ts';
import { FIGURES } from '../../content/figures/index.ts';
import { ALL_SOURCES, WORD_SOURCES } from '../../content/sources.ts';
import { type Entry, readCollection, textsIn } from './read-content.ts';

const ROOT = join(import.meta.dirname, '../..');
const ids = (name: string) => new Set(readCollection(name).map(({ id }) => id));
const names = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);

const known = {
  technique: ids('techniques'),
  caution: ids('cautions'),
  defect: ids('defects'),
  worksheet: ids('worksheets'),
  table: ids('tables'),
  example: new Set(Object.keys(examples)),
  source: new Set(Object.keys(ALL_SOURCES)),
  figure: new Set(Object.keys(FIGURES)),
};

const COLLECTIONS = ['techniques', 'cautions', 'defects', 'tables', 'worksheets'];

function uses({ data, body }: Entry) {
  const inText = textsIn(data).flatMap((text) =>
    [...text.matchAll(/\{([a-z0-9-]+)\}/g)].map(([, id = '']) => id),
  );
  const tag = (name: string, prop: string) =>
    [...body.matchAll(new RegExp(`<${name}\\s[^>]*${prop}="([^"]*)"`, 'g'))].map(([, id = '']) => id);
  const keyNumbers = Array.isArray(data.keyNumbers)
    ? data.keyNumbers.map(({ figure }) => String(figure))
    : [];
  return {
    technique: names(data.prerequisites),
    caution: [...names(data.cautions), ...tag('Caution', 'slug')],
    defect: names(data.defects),
    worksheet: [...names(data.worksheets), ...tag('WorksheetHere', 'id')],
    example: typeof data.example === 'string' ? [data.example] : [],
    source: [...names(data.sources), ...names(data.basis)],
    figure: [...inText, ...keyNumbers, ...tag('Fig', 'id')],
  };
}

it.each(COLLECTIONS.flatMap(readCollection))('$place names only what exists', (entry) => {
  expect(describeDangling(findDangling([{ place: entry.place, uses: uses(entry) }], known))).toBe('');
});

it.each(Object.entries(FIGURES))(
  'figure %s names a source that exists, and one unless it is practice or arithmetic',
  (_, figure) => {
    if (figure.source) expect(Object.keys(ALL_SOURCES)).toContain(figure.source);
    else expect(['common-practice', 'derived']).toContain(figure.mark);
  },
);

it('every figure and every source of the words is used', () => {
  const used = COLLECTIONS.flatMap(readCollection).map(uses);
  const figures = new Set(used.flatMap(({ figure }) => figure));
  const sources = new Set([
    ...used.flatMap(({ source }) => source),
    ...Object.values(FIGURES).map((figure) => figure.source),
  ]);
  expect(Object.keys(FIGURES).filter((id) => !figures.has(id))).toEqual([]);
  expect(Object.keys(WORD_SOURCES).filter((id) => !sources.has(id))).toEqual([]);
});

it('no source id is given twice', () => {
  expect(Object.keys(WORD_SOURCES).filter((id) => id in SOURCES)).toEqual([]);
});

it('every caution a finding points to has its page', () => {
  const files = globSync('{calc,worksheets}/**/*.{ts,tsx}', {
    cwd: ROOT,
    exclude: (name) => name.includes('node_modules'),
  });
  const slugs = files.flatMap((file) =>
    [...readFileSync(join(ROOT, file), 'utf8').matchAll(/\bcaution: '([a-z0-9-]+)'/g)].map(([, slug]) => ({
      file,
      slug,
    })),
  );
  expect(slugs.filter(({ slug }) => !known.caution.has(slug ?? ''))).toEqual([]);
});

describe('findDangling', () => {
  it('finds a name that leads nowhere and offers the nearest', () => {
    const found = findDangling([{ place: 'a.mdx', uses: { caution: ['colling-clock', 'cooling-clock'] } }], {
      caution: new Set(['cooling-clock', 'hot-fat']),
    });
    expect(describeDangling(found)).toBe(
      'a.mdx: names caution "colling-clock", and there is none. Did you mean "cooling-clock"?',
    );
  });

  it('finds every name of a kind that has no entries at all', () => {
    expect(findDangling([{ place: 'a', uses: { table: ['x'] } }], {})).toHaveLength(1);
  });
});

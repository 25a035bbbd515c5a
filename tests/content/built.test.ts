import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCollection } from './read-content.ts';

const DIST = join(import.meta.dirname, '../../dist');
const page = (path: string) => readFileSync(join(DIST, path, 'index.html'), 'utf8');
const names = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);

const cautions = readCollection('cautions');
const byId = new Map(cautions.map((caution) => [caution.id, caution.data]));

/** What a reader sees of a page, folded parts left out. */
const unfolded = (html: string) => html.replace(/<details.*?<\/details>/gs, '');

describe.skipIf(!existsSync(join(DIST, 'cautions/index.html')))('the built site', () => {
  it.each(cautions)('$place reaches its page, whole', ({ id, data }) => {
    const html = page(`cautions/${id}`);
    expect(html).toContain(`data-severity="${data.severity}"`);
    expect(html).toContain(`>${data.code}<`);
    expect(html.match(/<li>/g)?.length ?? 0).toBeGreaterThanOrEqual(
      names(data.do).length + names(data.doNot).length,
    );
  });

  it.each(readCollection('techniques'))('$place shows its cautions unfolded', ({ id, data }) => {
    const html = unfolded(page(`technique/${id}`));
    for (const slug of names(data.cautions)) expect(html).toContain(`data-code="${byId.get(slug)?.code}"`);
  });

  it.each(readCollection('worksheets'))('$place shows its cautions unfolded', ({ id, data }) => {
    const html = unfolded(page(`worksheets/${id}`));
    for (const slug of names(data.cautions)) expect(html).toContain(`data-code="${byId.get(slug)?.code}"`);
  });

  it.each(readCollection('defects'))('$place reaches its page', ({ id }) => {
    expect(page(`defects/${id}`)).toContain('Causes, likeliest first');
  });

  it('leaves no figure unfilled', () => {
    const pages = ['cautions', 'defects'].flatMap((name) =>
      readCollection(name).map(({ id }) => `${name}/${id}`),
    );
    expect(pages.filter((path) => /\{[a-z]+-[a-z-]+\}/.test(page(path)))).toEqual([]);
  });
});

import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCollection } from './read-content.ts';

const DIST = join(import.meta.dirname, '../../dist');
const page = (path: string) => readFileSync(join(DIST, path, 'index.html'), 'utf8');
const names = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);

const cautions = readCollection('cautions');
const techniques = readCollection('techniques');
const carried = new Map(readCollection('worksheets').map(({ id, data }) => [id, names(data.cautions)]));
const byId = new Map(cautions.map((caution) => [caution.id, caution.data]));

/** Every address a page points to on this site, with the part after the sign. */
function linksOf(html: string): string[] {
  return [...html.matchAll(/<a\s[^>]*href="([^"]*)"/g)]
    .map(([, href = '']) => href)
    .filter((href) => /^[/#]/.test(href));
}

/** Ids of a page that a link may lead to. */
const idsOf = (html: string) => new Set([...html.matchAll(/\sid="([^"]*)"/g)].map(([, id = '']) => id));

/** Parts after the sign that a script reads: a batch to open, not a place on the page. */
const READ_BY_SCRIPT = /^(?:demo=|new$)/;

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

  it.each(techniques)('$place shows its cautions and those of its worksheets unfolded', ({ id, data }) => {
    const html = unfolded(page(`technique/${id}`));
    const brought = names(data.worksheets).flatMap((worksheet) => carried.get(worksheet) ?? []);
    for (const slug of [...names(data.cautions), ...brought])
      expect(html).toContain(`data-code="${byId.get(slug)?.code}"`);
  });

  it.each(techniques)('$place has every stop above its method', ({ id }) => {
    const html = page(`technique/${id}`);
    const method = html.indexOf('class="method"');
    expect(method).toBeGreaterThan(0);
    expect(html.lastIndexOf('data-severity="stop"')).toBeLessThan(method);
  });

  it.each(readCollection('worksheets'))('$place shows its cautions unfolded', ({ id, data }) => {
    const html = unfolded(page(`worksheets/${id}`));
    for (const slug of names(data.cautions)) expect(html).toContain(`data-code="${byId.get(slug)?.code}"`);
  });

  it.each(readCollection('defects'))('$place reaches its page', ({ id }) => {
    expect(page(`defects/${id}`)).toContain('Causes, likeliest first');
  });

  it('has no link that leads nowhere, page and place', () => {
    const files = globSync('**/*.html', { cwd: DIST });
    const html = new Map(
      files.map((file) => [`/${file.replace(/index\.html$/, '')}`, readFileSync(join(DIST, file), 'utf8')]),
    );
    const dead = [...html].flatMap(([from, source]) =>
      linksOf(source)
        .filter((href) => {
          const { pathname, hash } = new URL(href, `https://site${from}`);
          const target = html.get(pathname);
          if (target === undefined) return !existsSync(join(DIST, pathname));
          const place = decodeURIComponent(hash.slice(1));
          return place !== '' && !READ_BY_SCRIPT.test(place) && !idsOf(target).has(place);
        })
        .map((href) => `${from} → ${href}`),
    );
    expect(dead).toEqual([]);
  });

  it('gives no id twice on a page', () => {
    const twice = globSync('**/*.html', { cwd: DIST }).filter((file) => {
      const ids = [...readFileSync(join(DIST, file), 'utf8').matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
      return new Set(ids).size < ids.length;
    });
    expect(twice).toEqual([]);
  });

  it('leaves no figure unfilled', () => {
    const pages = ['cautions', 'defects'].flatMap((name) =>
      readCollection(name).map(({ id }) => `${name}/${id}`),
    );
    expect(pages.filter((path) => /\{[a-z]+-[a-z-]+\}/.test(page(path)))).toEqual([]);
  });
});

import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { CASINGS } from '@larderwright/calc/casings';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { createViteServer } from 'vitest/node';
import { ROOT } from '../../site/tools/project.mjs';
import { wordsFrom } from '../../site/tools/words.mjs';
import { writePseudo } from '../tools/pseudo.ts';

/*
 * Worksheets in a language nobody speaks, straight from their sources: what shows without brackets was forgotten.
 */

const DESK = join(ROOT, 'tests', 'out', 'language');
const WORDS = join(DESK, 'words');
const SHEETS = ['casings/Casings', 'gelee/Gelee'] as const;
/** Rows of a table and a unit are data, the same in every language. */
const DATA = [...CASINGS.map(({ name }) => name), 'bloom'];
const STYLES = [
  ...['layers', 'tokens', 'base', 'furniture', 'content', 'print'],
  ...['parts', 'weigh', 'fill', 'sheet', 'card'].map((name) => `worksheet/${name}`),
];

/** A page that holds one worksheet and nothing else. */
const pageOf = (sheet: string) => `
  ${STYLES.map((name) => `import '/site/styles/${name}.css';`).join('\n')}
  import { h, render } from 'preact';
  import Sheet from '/worksheets/${sheet}.tsx';
  const none = new Proxy({}, { get: () => '#' });
  render(h(Sheet, { links: { ...none, cautions: {}, worksheets: {}, sources: {} }, standing: '' }), document.querySelector('main'));
`;

let server: Awaited<ReturnType<typeof createViteServer>>;
let browser: Browser;

beforeAll(async () => {
  await rm(DESK, { recursive: true, force: true });
  await mkdir(DESK, { recursive: true });
  await writePseudo(WORDS);
  for (const [at, sheet] of SHEETS.entries()) {
    await writeFile(join(DESK, `${at}.js`), pageOf(sheet));
    await writeFile(
      join(DESK, `${at}.html`),
      `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>Words</title><main></main><script type="module" src="/tests/out/language/${at}.js"></script>`,
    );
  }
  server = await createViteServer({
    root: ROOT,
    configFile: false,
    cacheDir: join(DESK, 'cache'),
    logLevel: 'error',
    plugins: [wordsFrom(WORDS)],
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    optimizeDeps: { noDiscovery: true },
    server: { port: 0, host: '127.0.0.1', hmr: false, watch: null },
  });
  await server.listen();
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(async () => {
  await browser.close();
  await server.close();
  await rm(DESK, { recursive: true, force: true });
});

/** Texts and names on the page with a word in them and no bracket around it. */
function withoutBrackets(page: Page, data: readonly string[]): Promise<string[]> {
  return page.evaluate((known) => {
    const main = document.querySelector('main');
    if (!main) return ['no page'];
    const isWord = (text: string) => /\p{L}{3}/u.test(text) && !known.includes(text.trim());
    const found: string[] = [];
    let depth = 0;
    const walker = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.nodeValue ?? '';
      if (depth === 0 && !text.includes('⟦') && isWord(text)) found.push(text);
      depth += text.split('⟦').length - text.split('⟧').length;
    }
    for (const element of main.querySelectorAll('[aria-label], [placeholder], [title]'))
      for (const name of ['aria-label', 'placeholder', 'title']) {
        const text = element.getAttribute(name) ?? '';
        if (isWord(text) && !text.includes('⟦')) found.push(`${name}: ${text}`);
      }
    return found;
  }, data);
}

describe.each(SHEETS.map((sheet, at) => ({ sheet, at })))(
  'the worksheet $sheet in another language',
  ({ at }) => {
    it('says everything in it, and fits 320 px', async () => {
      const address = server.resolvedUrls?.local[0] ?? '';
      const page = await browser.newPage({ viewport: { width: 320, height: 800 } });
      const errors: string[] = [];
      page.on('pageerror', (error) => errors.push(error.message));
      await page.goto(`${address}tests/out/language/${at}.html`, { waitUntil: 'networkidle' });
      await expect.poll(() => page.locator('main h2').count()).toBeGreaterThan(1);
      expect(await page.locator('main').textContent()).toContain('⟦');
      expect(await withoutBrackets(page, DATA)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      expect(errors).toEqual([]);
      await page.close();
    });
  },
);

import { execFileSync } from 'node:child_process';
import { globSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { DIST } from '../../site/tools/build.mjs';
import { HEADERS_FILE, headersFor, readHeaders } from '../../site/tools/headers.mjs';
import { nginxConfig } from '../../site/tools/nginx.mjs';
import { serve } from '../../site/tools/serve.mjs';
import { awake, field, saved } from './bench.ts';
import { openPage } from './browser.ts';
import { pdfOf, readPdf } from './pdf.ts';

const TOP = join(import.meta.dirname, '../..');

describe('in a folder of its host', () => {
  const BASE = '/larder/';
  const OUT = join(TOP, 'tests/out/larder');
  let site: Awaited<ReturnType<typeof serve>>;

  beforeAll(async () => {
    execFileSync('npm', ['run', '--silent', 'build'], {
      cwd: TOP,
      // Not what the test runner sets for itself: a build would take it for its own.
      env: { PATH: process.env.PATH, HOME: process.env.HOME, BASE, OUT, ASTRO_TELEMETRY_DISABLED: '1' },
      stdio: 'ignore',
    });
    site = await serve({ folder: OUT, port: 0, host: '127.0.0.1', base: BASE });
  }, 240_000);
  afterAll(async () => {
    await site.close();
    rmSync(OUT, { recursive: true });
  });

  it('every address in a page, a data file and the manifest stays in the folder', () => {
    const files = globSync('**/*.{html,json}', { cwd: OUT, exclude: ['offline/**', 'pagefind/**'] });
    expect(files.filter((file) => file.endsWith('.html')).length).toBeGreaterThan(150);
    const astray = files.flatMap((file) =>
      [
        ...readFileSync(join(OUT, file), 'utf8').matchAll(
          /(?:href|src|-url)="(\/[^"]*)"|"(\/[a-z][\w-]*\/[^"]*)"/g,
        ),
      ]
        .map(([, attribute, text]) => attribute ?? text ?? '')
        .filter((address) => !address.startsWith(BASE))
        .map((address) => `${file}: ${address}`),
    );
    expect(astray).toEqual([]);
    expect(readFileSync(join(OUT, 'site.webmanifest'), 'utf8')).not.toMatch(/": "\//);
  });

  it('pages, a worksheet with its demo, the search and the copy on the device work', async () => {
    await using visit = await openPage(BASE, {
      origin: `http://127.0.0.1:${site.port}`,
      keepsItself: true,
    });
    const { page } = visit;
    await page.getByText('The whole site is on this device').waitFor({ timeout: 30_000 });
    await page.getByRole('link', { name: 'Techniques' }).first().click();
    await page.waitForURL(`**${BASE}technique/`);
    await page.goto(`${BASE}technique/rillettes/`, { waitUntil: 'networkidle' });
    await page.locator('.text a[href*="/technique/curing-salts/"]').first().click();
    await page.waitForURL(`**${BASE}technique/curing-salts/`);
    await page.keyboard.press('/');
    await page.locator('.search-field').fill('crumbly');
    await page.locator('.search-hits a').first().waitFor();
    await page.keyboard.press('Enter');
    await page.waitForURL(`**${BASE}defects/crumbly/`);
    await page.goto(`${BASE}worksheets/cook-plan/#demo=country-terrine`);
    await page
      .locator('.answer')
      .filter({ hasText: /^Core reaches/ })
      .waitFor({ timeout: 30_000 });
    expect(await page.evaluate(async () => (await navigator.serviceWorker.ready).scope)).toMatch(
      /\/larder\/$/,
    );
    expect(visit.problems).toEqual([]);
  });
});

describe('over plain http in a kitchen’s own network', () => {
  it('the page says what is missing, and a batch is typed, kept, found again and printed all the same', async () => {
    // The browser of the tests finds this name at 127.0.0.1, and trusts it no more than any other.
    const origin = `http://kitchen.test:${new URL(inject('siteOrigin')).port}`;
    await using visit = await openPage('/worksheets/batch-formula/', { origin, keepsItself: true });
    const { page } = visit;
    expect(await page.evaluate(() => [isSecureContext, 'serviceWorker' in navigator])).toEqual([
      false,
      false,
    ]);
    await awake(page);
    await field(page, 'Product').fill('Typed over plain http');
    await page.getByText(/came over plain http\. Missing here: work without a network/).waitFor();
    await saved(page);
    await page.reload();
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Typed over plain http');
    await page.goto('/worksheets/batch-sheet/');
    await awake(page);
    await page.locator('.sheet').filter({ hasText: 'Typed over plain http' }).first().waitFor();
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    expect(pages.map(({ text }) => text).join(' ')).toContain('Typed over plain http');
    await page.goto('/cautions/');
    await page.locator('.kept-line').waitFor();
    expect(await page.locator('.kept-line').textContent()).toMatch(/screen that stays awake/);
    expect(visit.problems).toEqual([]);
  });
});

describe('the headers of the finished site', () => {
  const rules = readHeaders(readFileSync(join(DIST, HEADERS_FILE), 'utf8'));

  it('give every page a policy and no path two', () => {
    for (const file of globSync('**/*.html', { cwd: DIST })) {
      const path = `/${file.replace(/index\.html$/, '')}`;
      const policies = rules.filter(
        (rule) => headersFor([rule], path)['Content-Security-Policy'] !== undefined,
      );
      expect([path, policies.length]).toEqual([path, 1]);
      expect(headersFor(rules, path)['Content-Security-Policy']).toContain("frame-ancestors 'none'");
      const [, meta = ''] =
        /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(
          readFileSync(join(DIST, file), 'utf8'),
        ) ?? [];
      expect(meta).toMatch(/^default-src 'none'; script-src 'self'/);
      expect(meta).not.toContain('wasm');
    }
  });

  it('keep within what common hosts read: 100 rules, 2000 letters a line (from memory)', () => {
    expect(rules.length).toBeLessThan(100);
    for (const { headers } of rules)
      for (const [name, value] of Object.entries(headers))
        expect(`${name}: ${value}`.length).toBeLessThan(2000);
  });

  it('become a configuration of nginx with every header of every rule', () => {
    const text = nginxConfig({ rules, base: '/', root: '/site', certificate: '/c/k.crt', key: '/c/k.key' });
    for (const { headers } of rules)
      for (const [name, value] of Object.entries(headers)) {
        expect(text).toContain(`"${value}";`);
        expect(text).toMatch(new RegExp(`add_header ${name} \\$larder_\\w+ always;`));
      }
    expect(text.split('{').length).toBe(text.split('}').length);
    expect(text).toContain('listen 443 ssl');
    expect(() =>
      nginxConfig({
        rules: [{ path: '/', headers: { A: 'b"; evil' } }],
        ...{ base: '/', root: '/', certificate: '', key: '' },
      }),
    ).toThrow('misread');
  });
});

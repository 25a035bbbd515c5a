import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { saved } from './bench.ts';
import { openPage, type Visit } from './browser.ts';
import { fileOf, sitePaths } from './pages.ts';

/*
 * Byte budgets of the finished site, gzip, for a reader who comes for the first time. House rules.
 */

/** A page without a worksheet. */
const PLAIN = { total: 20_000, css: 6_000, js: 1_500, requests: 6 };
/** A page with a worksheet, before the first touch and with no batch on the device. */
const WORKSHEET = { total: 36_000, js: 16_000 };
/** The same with a batch on the device: what it needs to answer loads at once. The batch sheet needs every subject. */
const WITH_BATCH = { total: 256_000, sheet: 320_000 };
/** The first search, beside the chunks of the index. */
const FIRST_SEARCH = 90_000;

const PLAIN_PAGES = [
  '/',
  '/technique/country-terrine/',
  '/technique/cooked-sausages/',
  '/cautions/cooling-clock/',
  '/defects/',
  '/tables/nitrite-limits/',
  '/how-we-know/',
];
/** The lightest, the heaviest, and what lies between. */
const WITH_BATCH_PAGES = [
  'crust',
  'batch-formula',
  'cook-log',
  'label',
  'press-and-chill',
  'batch-sheet',
].map((name) => `/worksheets/${name}/`);
const WORKSHEETS = sitePaths().filter((path) => /^\/worksheets\/[^/]+\/$/.test(path));

const weigh = (paths: readonly string[]) =>
  paths.reduce((sum, one) => sum + gzipSync(readFileSync(fileOf(one)), { level: 9 }).length, 0);
const ending = (paths: readonly string[], tail: RegExp) => paths.filter((path) => tail.test(path));

/** Everything a page asks for until it is quiet, in a browser that has nothing of the site yet. */
async function askedFor(path: string, before?: (visit: Visit) => Promise<void>): Promise<string[]> {
  await using visit = await openPage('/404.html');
  await before?.(visit);
  const asked: string[] = [];
  visit.page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await visit.page.goto(path, { waitUntil: 'networkidle' });
  expect(visit.problems).toEqual([]);
  return [...new Set([...asked, '/mark.svg'])];
}

describe.each(PLAIN_PAGES)('the weight of %s', (path) => {
  it('keeps its budgets', async () => {
    const files = await askedFor(path);
    expect(files.length).toBeLessThanOrEqual(PLAIN.requests);
    expect(weigh(ending(files, /\.css$/))).toBeLessThanOrEqual(PLAIN.css);
    expect(weigh(ending(files, /\.js$/))).toBeLessThanOrEqual(PLAIN.js);
    expect(weigh(files)).toBeLessThanOrEqual(PLAIN.total);
  });
});

it('a worksheet weighs little until a hand is laid on it', async () => {
  expect(WORKSHEETS.length).toBeGreaterThan(15);
  const rows = [];
  for (const path of WORKSHEETS) {
    const files = await askedFor(path);
    rows.push({ path, js: weigh(ending(files, /\.js$/)), total: weigh(files), requests: files.length });
  }
  console.table(rows);
  expect(rows.filter(({ js, total }) => js > WORKSHEET.js || total > WORKSHEET.total)).toEqual([]);
}, 180_000);

it('a worksheet with a batch on the device fetches what it needs and no more', async () => {
  const rows = [];
  for (const path of WITH_BATCH_PAGES) {
    const files = await askedFor(path, async ({ page }) => {
      await page.goto('/worksheets/batch-formula/#demo=country-terrine', { waitUntil: 'networkidle' });
      await saved(page);
    });
    rows.push({ path, js: weigh(ending(files, /\.js$/)), total: weigh(files), requests: files.length });
  }
  console.table(rows);
  const most = (path: string) => (path.endsWith('/batch-sheet/') ? WITH_BATCH.sheet : WITH_BATCH.total);
  expect(rows.filter(({ path, total }) => total > most(path))).toEqual([]);
}, 180_000);

it('the first search fetches little beside the index', async () => {
  await using visit = await openPage('/404.html');
  const { page } = visit;
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await page.goto('/cautions/', { waitUntil: 'networkidle' });
  const before = new Set(asked);
  await page.keyboard.press('/');
  await page.locator('.search-field').fill('cooling');
  await page.locator('.search-hits a').first().waitFor();
  const files = [...new Set(asked)].filter((file) => !before.has(file));
  const index = files.filter((file) => /\/pagefind\/((index|fragment|filter)\/|.+\.pf_meta$)/.test(file));
  console.table([{ beside: weigh(files.filter((file) => !index.includes(file))), index: weigh(index) }]);
  expect(weigh(files.filter((file) => !index.includes(file)))).toBeLessThanOrEqual(FIRST_SEARCH);
  expect(visit.problems).toEqual([]);
});

import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, type Visit } from './browser.ts';
import { fileOf } from './pages.ts';
import { QUERIES } from './search-queries.ts';

/** First open, index chunks and the results shown, bytes over the wire. House rule: 90 kB and what was looked up. */
const MOST_BYTES_A_QUERY = 300_000;

let visit: Visit;
const bytes: number[] = [];
beforeAll(async () => {
  visit = await openPage('/404.html');
});
afterAll(async () => {
  await visit[Symbol.asyncDispose]();
  const mean = bytes.reduce((sum, one) => sum + one, 0) / bytes.length;
  process.stdout.write(
    `search: ${bytes.length} queries, ${Math.round(mean / 1000)} kB of index a query on average, ` +
      `${Math.round(Math.max(...bytes) / 1000)} kB at most\n`,
  );
});

/** The index's own files are packed as they lie; scripts and lists are packed on the way. */
function overTheWire(path: string): number {
  const file = readFileSync(fileOf(path));
  return /\.(?:js|txt|json)$/.test(path) ? gzipSync(file).length : file.length;
}

/** The addresses a query finds, best first, and the bytes of the index it took on a page that had none. */
async function ask(query: string): Promise<{ paths: string[]; weight: number }> {
  const page: Page = await visit.context.newPage();
  const asked = new Set<string>();
  page.context().on('request', (request) => asked.add(new URL(request.url()).pathname));
  await page.goto(`/search/?q=${encodeURIComponent(query)}`);
  await page.waitForFunction(() => {
    const said = document.querySelector('.search-said')?.textContent ?? '';
    return document.querySelector('.search-hits a') || /^Nothing for “.*”\.$|could not/.test(said);
  });
  const paths = await page
    .locator('.search-hits a')
    .evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).pathname));
  await page.close();
  const weight = [...asked]
    .filter((path) => path.startsWith('/pagefind/'))
    .reduce((sum, path) => sum + overTheWire(path), 0);
  return { paths, weight };
}

describe('what a query finds', () => {
  it('is asked in at least sixty ways', () => {
    expect(QUERIES.length).toBeGreaterThanOrEqual(60);
  });

  it.each(QUERIES)('%s → %s in the first three', async (query, path) => {
    const { paths, weight } = await ask(query);
    bytes.push(weight);
    expect(paths.slice(0, 3)).toContain(path);
    expect(weight).toBeLessThan(MOST_BYTES_A_QUERY);
  });
});

it('offers what was meant, and answers it', async () => {
  await using other = await openPage('/search/?q=suasage');
  const offer = other.page.locator('.search-said button');
  await offer.waitFor();
  expect(await offer.textContent()).toBe('sausage');
  expect(await other.page.locator('.search-hits a').count()).toBeGreaterThan(0);
  await offer.click();
  expect(await other.page.locator('.search-field').inputValue()).toBe('sausage');
  expect(other.problems).toEqual([]);
});

it('lands on the row of a table', async () => {
  await using other = await openPage('/search/?q=staphylococcus+water+activity');
  const link = other.page.locator('.search-hits a[href*="/tables/water-activity/#growth-"]').first();
  await link.waitFor();
  await link.click();
  await other.page.waitForURL('**/tables/water-activity/#growth-staphylococcus');
  expect(await other.page.locator('tr:target').count()).toBe(1);
});

it('says so where nothing is like it', async () => {
  await using other = await openPage('/search/?q=zzqqxx');
  await other.page.locator('.search-said', { hasText: 'Nothing' }).waitFor();
  expect(await other.page.locator('.search-hits a').count()).toBe(0);
});

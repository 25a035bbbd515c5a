/**
 * The page of batches with 1,000 of them on the device: how long until the list stands, and how long a search takes to show
 * its answer. In a real browser, on the last build. Run with Node: `npx node tests/bench/batch-list.ts`.
 */
import { readBatch } from '@larderwright/calc/batch';
import { chromium, type Page } from 'playwright-core';
import { demos } from '../../content/demo/index.ts';
import { DIST } from '../../site/tools/build.mjs';
import { serve } from '../../site/tools/serve.mjs';
import { printTable } from '../calc/heat/print.ts';
import { findBrowser } from '../tools/find-browser.mjs';
import { median } from './registry.ts';

const BATCHES = 1_000;
const LIST_GOAL_MS = 200;
const SEARCH_GOAL_MS = 50;
const SEARCHES = ['t', 'tr', 'trout', 'venison 2026', 'v-118', 'held', 'nothing at all'];

const site = await serve({ folder: DIST, port: 0, host: '127.0.0.1' });
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  chromiumSandbox: process.getuid?.() !== 0,
});
const page = await (await browser.newContext({ baseURL: `http://127.0.0.1:${site.port}` })).newPage();

/** Lays copies of the demos on the device, as batches of somebody's own. */
async function fill(): Promise<void> {
  const originals = Object.values(demos).map((demo) => JSON.stringify(demo));
  for (const original of originals)
    if (!readBatch(JSON.parse(original)).ok) throw new Error('a demo cannot be read');
  await page.evaluate(
    async ({ texts, count }) => {
      const db = await new Promise<IDBDatabase>((resolve) => {
        const asked = indexedDB.open('larderwright');
        asked.onsuccess = () => resolve(asked.result);
      });
      const tx = db.transaction('batches', 'readwrite');
      for (let index = 0; index < count; index += 1) {
        const batch = JSON.parse(texts[index % texts.length] ?? '');
        batch.product.batchNo += `-${index}`;
        tx.objectStore('batches').put({ ...batch, id: `bench-${index}`, demo: false });
      }
      await new Promise((resolve) => {
        tx.oncomplete = resolve;
      });
      db.close();
    },
    { texts: originals, count: BATCHES },
  );
}

/** From the start of the page load to the first row on screen, ms. */
async function listMs(): Promise<number> {
  await page.goto('/batches/');
  await page.locator('.shelf-row').first().waitFor();
  return page.evaluate(() => performance.getEntriesByName('list-stands')[0]?.startTime ?? Number.NaN);
}

/** From a keystroke to the painted answer, ms. */
function searchMs(on: Page, text: string): Promise<number> {
  return on.evaluate(async (words) => {
    const box = document.querySelector<HTMLInputElement>('#find-batch');
    if (!box) throw new Error('there is no search');
    const before = performance.now();
    box.value = words;
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - before;
  }, text);
}

await page.goto('/batches/');
await page.locator('.all-batches[data-shelf="open"]').waitFor();
await fill();
const before = performance.now();
await page.reload();
await page.locator('.shelf-row').first().waitFor();
const firstMs = performance.now() - before;
await page.addInitScript(() => {
  new MutationObserver((_, watcher) => {
    if (!document.querySelector('.shelf-row')) return;
    performance.mark('list-stands');
    watcher.disconnect();
  }).observe(document, { childList: true, subtree: true });
});
const lists: number[] = [];
for (let run = 0; run < 9; run += 1) lists.push(await listMs());
const searches: [string, number][] = [];
for (const text of SEARCHES) {
  const runs: number[] = [];
  for (let run = 0; run < 7; run += 1) {
    await searchMs(page, '');
    runs.push(await searchMs(page, text));
  }
  searches.push([text, median(runs)]);
}
printTable(
  `${BATCHES} batches`,
  ['what', 'ms', 'goal ms'],
  [
    ['summaries made once, after an older layout', firstMs.toFixed(0), ''],
    ['list stands, from the start of the load', median(lists).toFixed(0), `< ${LIST_GOAL_MS}`],
    ...searches.map(([text, ms]) => [`search "${text}", painted`, ms.toFixed(0), `< ${SEARCH_GOAL_MS}`]),
  ],
);
await browser.close();
await site.close();

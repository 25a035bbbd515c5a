import { readBatch } from '@larderwright/calc/batch';
import type { Page } from 'playwright-core';
import { demos } from '../../content/demo/index.ts';
import { type OnSite, onSite } from './on-site.ts';
import { median, type Subject } from './registry.ts';

/*
 * The page of batches with 1,000 of them on the device: how long until the list stands, and how long a search takes to
 * show its answer; and what keeping one record costs. In a real browser, on the last build.
 */

const BATCHES = 1_000;
const LIST_GOAL_MS = 200;
const SEARCH_GOAL_MS = 50;
const SEARCHES = ['t', 'tr', 'trout', 'venison 2026', 'v-118', 'held', 'nothing at all'];

/** Lays copies of the demos on the device, as batches of somebody's own. */
async function fill(page: Page): Promise<void> {
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
async function listMs(page: Page): Promise<number> {
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

/** Writes and reads of the browser's own store, without ours, ms each. */
function rawMs(page: Page, what: 'put' | 'get all'): Promise<number> {
  return page.evaluate(async (asked) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('larderwright');
      opening.onsuccess = () => resolve(opening.result);
    });
    const one = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const [first] = await one(db.transaction('batches').objectStore('batches').getAll(null, 1));
    const before = performance.now();
    if (asked === 'put') {
      const tx = db.transaction('batches', 'readwrite');
      tx.objectStore('batches').put(first);
      await new Promise((resolve) => {
        tx.oncomplete = resolve;
      });
    } else await one(db.transaction('summaries').objectStore('summaries').getAll());
    const ms = performance.now() - before;
    db.close();
    return ms;
  }, what);
}

let site: OnSite | null = null;
let firstMs = Number.NaN;

async function filled(): Promise<Page> {
  site = await onSite();
  const page = await site.newPage();
  await page.goto('/batches/');
  await page.locator('.all-batches[data-shelf="open"]').waitFor();
  await fill(page);
  const before = performance.now();
  await page.reload();
  await page.locator('.shelf-row').first().waitFor();
  firstMs = performance.now() - before;
  await page.addInitScript(() => {
    new MutationObserver((_, watcher) => {
      if (!document.querySelector('.shelf-row')) return;
      performance.mark('list-stands');
      watcher.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
  return page;
}

const store: Subject = {
  subject: 'store',
  entries: async () => {
    const page = await filled();
    return [
      {
        name: `summaries of ${BATCHES} batches made once, after an older layout`,
        unit: 'ms',
        runs: 1,
        measure: () => firstMs,
      },
      {
        name: `list of ${BATCHES} batches stands, from the start of the load`,
        unit: 'ms',
        target: LIST_GOAL_MS,
        measure: () => listMs(page),
        against: { name: 'reading all summaries without a page', measure: () => rawMs(page, 'get all') },
      },
      {
        name: `search in ${BATCHES} batches, painted`,
        unit: 'ms',
        target: SEARCH_GOAL_MS,
        measure: async () => {
          const spans: number[] = [];
          for (const text of SEARCHES) {
            await searchMs(page, '');
            spans.push(await searchMs(page, text));
          }
          return median(spans);
        },
        note: () => `median of ${SEARCHES.length} searches`,
      },
      { name: 'one record put, the browser alone', unit: 'ms', measure: () => rawMs(page, 'put') },
    ];
  },
  close: async () => site?.close(),
};
export default store;

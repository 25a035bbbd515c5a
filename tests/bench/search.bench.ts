import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { fileOf, sitePaths } from '../site/pages.ts';
import { type OnSite, onSite } from './on-site.ts';
import { median, type Subject } from './registry.ts';

let site: OnSite | null = null;
let warm: Page | null = null;

/** From opening the dialog in a fresh profile to the first hit on screen, ms. */
async function firstMs(): Promise<number> {
  site ??= await onSite();
  const page = await site.newPage();
  await page.goto('/cautions/', { waitUntil: 'networkidle' });
  const before = performance.now();
  await page.keyboard.press('/');
  await page.locator('.search-field').fill('cooling');
  await page.locator('.search-hits a').first().waitFor();
  const ms = performance.now() - before;
  await page.context().close();
  return ms;
}

const WORDS = ['nitrite', 'crumbly', 'gelatine'];

async function warmPage(): Promise<Page> {
  if (warm) return warm;
  site ??= await onSite();
  const page = await site.newPage();
  await page.goto('/cautions/', { waitUntil: 'networkidle' });
  await page.keyboard.press('/');
  await page.locator('.search-field').fill('cooling');
  await page.locator('.search-hits a').first().waitFor();
  warm = page;
  return page;
}

/** Per letter of a word typed into a search that is warm, until its hits have changed or it is quiet, ms in the page. */
async function perKeyMs(): Promise<number> {
  const page = await warmPage();
  const spans: number[] = [];
  for (const word of WORDS) {
    spans.push(
      await page.evaluate(async (text) => {
        const field = document.querySelector<HTMLInputElement>('.search-field');
        const hits = document.querySelector('.search-hits');
        if (!field || !hits) throw new Error('there is no search');
        const spent: number[] = [];
        for (let length = 1; length <= text.length; length += 1) {
          const before = performance.now();
          let last = before;
          const watcher = new MutationObserver(() => {
            last = performance.now();
          });
          watcher.observe(hits, { childList: true, subtree: true });
          field.value = text.slice(0, length);
          field.dispatchEvent(new InputEvent('input', { bubbles: true }));
          await new Promise((done) => setTimeout(done, 250));
          watcher.disconnect();
          spent.push(last - before);
        }
        spent.sort((a, b) => a - b);
        return spent[spent.length >> 1] ?? Number.NaN;
      }, word),
    );
  }
  return median(spans);
}

let texts: readonly string[] | null = null;

/** The plain way: every word looked for in the text of every page, already in memory. */
function scanMs(): number {
  texts ??= sitePaths().map((path) =>
    readFileSync(fileOf(path), 'utf8')
      .replace(/<script[\s\S]*?<\/script>|<style[\s\S]*?<\/style>|<[^>]+>/g, ' ')
      .toLowerCase(),
  );
  const spans = WORDS.map((word) => {
    const before = performance.now();
    const hits = texts?.filter((text) => text.includes(word)).length ?? 0;
    if (hits === 0) throw new Error(`${word} stands nowhere`);
    return performance.now() - before;
  });
  return median(spans);
}

const search: Subject = {
  subject: 'search',
  entries: () => [
    { name: 'first search, to the first hit', unit: 'ms', runs: 5, measure: firstMs },
    {
      name: 'each letter typed, to the last change of the hits',
      unit: 'ms',
      runs: 3,
      measure: perKeyMs,
      against: { name: 'scan of all page texts in memory, unranked', measure: scanMs },
      note: () => 'includes the pause after a letter',
    },
  ],
  close: async () => site?.close(),
};
export default search;

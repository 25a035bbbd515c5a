import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { demos } from '../../content/demo/index.ts';
import { DIST } from '../../site/tools/build.mjs';
import { serve } from '../../site/tools/serve.mjs';
import { awake, field, saved } from './bench.ts';
import { openPage, type Visit } from './browser.ts';
import { sitePaths } from './pages.ts';
import { pdfOf, readPdf } from './pdf.ts';

/** A copy of the site which a test may change and take away. */
let folder = '';
let site: Awaited<ReturnType<typeof serve>>;
let port = 0;
const origin = () => `http://127.0.0.1:${port}`;
const up = async () => {
  site = await serve({ folder, port, host: '127.0.0.1' });
  port = site.port;
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'larderwright-offline-'));
  cpSync(DIST, folder, { recursive: true });
  await up();
});
afterAll(async () => {
  await site.close();
  rmSync(folder, { recursive: true });
});

const KEPT = 'The whole site is on this device and works without a network.';

async function openKept(path: string): Promise<Visit> {
  const visit = await openPage(path, { origin: origin(), keepsItself: true });
  await visit.page.getByText(KEPT).waitFor({ timeout: 30_000 });
  return visit;
}

/** What is wrong but for the network that was cut. */
const problemsOf = ({ problems }: Visit) =>
  problems.filter((problem) => !/ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED|ERR_FAILED/.test(problem));

/** Writes a file of the served site, and the packs and the service worker anew, as a build would. */
function publish(path: string, change: (text: string) => string): void {
  const file = join(folder, path);
  writeFileSync(file, change(readFileSync(file, 'utf8')));
  execFileSync('node', ['site/tools/offline.mjs'], { env: { ...process.env, OUT: folder, BASE: '/' } });
}

const heading = (page: Page) => page.locator('h1').textContent();

describe('with the network cut after the first visit', () => {
  afterEach(async () => {
    await site.close();
    await up();
  });

  it('every page opens; a worksheet, the search, the heat worker and paper work', async () => {
    await using visit = await openKept('/');
    const { page, context } = visit;
    const cdp = await context.newCDPSession(page);
    expect((await cdp.send('Page.getAppManifest')).errors).toEqual([]);
    const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
    // Every profile of a test is one that forgets.
    expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
    await site.close();
    await context.setOffline(true);

    const failed = await page.evaluate(async (paths) => {
      const answers = await Promise.all(paths.map(async (path) => ({ path, ok: (await fetch(path)).ok })));
      return answers.filter(({ ok }) => !ok).map(({ path }) => path);
    }, sitePaths());
    expect(failed).toEqual([]);

    await page.goto('/tables/nitrite-limits');
    expect(new URL(page.url()).pathname).toBe('/tables/nitrite-limits/');
    await page.keyboard.press('/');
    await page.locator('.search-field').fill('cooling');
    await page.locator('.search-hits a').first().waitFor();

    await page.goto('/worksheets/batch-formula/');
    await awake(page);
    await field(page, 'Product').fill('Trial without a network');
    await saved(page);
    await page.reload();
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Trial without a network');

    await page.goto('/worksheets/cook-plan/#demo=country-terrine');
    await page
      .locator('.answer')
      .filter({ hasText: /^Core reaches/ })
      .waitFor({ timeout: 30_000 });
    expect(page.workers()).toHaveLength(1);

    await page.goto('/worksheets/batch-sheet/#demo=country-terrine');
    await page.locator('.sheet').first().waitFor();
    expect((await readPdf(await pdfOf(page, { format: 'A4' }))).length).toBeGreaterThan(0);

    await page.goto('/no-such-page/');
    expect(await heading(page)).toMatch(/not here|no such page|not found/i);
    // That answer is a 404 without a network too.
    expect(problemsOf(visit).filter((problem) => !/^404|status of 404/.test(problem))).toEqual([]);
  });
});

describe('a new edition', () => {
  it('waits while a batch is worked on, survives a killed worker, and comes when it is taken', async () => {
    await using visit = await openKept('/worksheets/batch-formula/');
    const { page, context } = visit;
    await page.reload({ waitUntil: 'networkidle' });
    await awake(page);
    await field(page, 'Product').fill('Begun on the old edition');
    await saved(page);
    const old = readFileSync(join(folder, 'technique/index.html'), 'utf8');
    // In the new build the search has another name: what an old page still asks for is gone from the server.
    const [dialog = ''] = readdirSync(join(folder, '_astro')).filter((name) => name.startsWith('dialog.'));
    const dialogText = readFileSync(join(folder, '_astro', dialog), 'utf8');
    rmSync(join(folder, '_astro', dialog));
    publish('technique/index.html', (html) => html.replace(/<h1([^>]*)>[^<]*/, '<h1$1>New edition'));

    const cdp = await context.newCDPSession(page);
    await cdp.send('ServiceWorker.enable');
    const look = () =>
      page.evaluate(async () => {
        const registration = await navigator.serviceWorker.getRegistration();
        await registration?.update().catch(() => undefined);
      });
    const looking = look();
    await cdp.send('ServiceWorker.stopAllWorkers');
    await looking;
    await page.waitForTimeout(500);
    await cdp.send('ServiceWorker.stopAllWorkers');
    // The page still answers, from the edition it came from.
    await field(page, 'Product').fill('Still on the old edition');
    await saved(page);
    await page.goto('/technique/', { waitUntil: 'networkidle' });
    expect(await heading(page)).not.toBe('New edition');
    await page.keyboard.press('/');
    await page.locator('.search-dialog .search-field').waitFor();
    await page.keyboard.press('Escape');

    await page.waitForTimeout(3200);
    await look();
    const offer = page.getByRole('button', { name: 'Open the new edition' });
    await offer.waitFor({ timeout: 30_000 });
    await page.goto('/worksheets/batch-formula/');
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Still on the old edition');
    await field(page, 'Product').fill('Typed just before');
    await offer.waitFor({ timeout: 30_000 });
    await Promise.all([page.waitForEvent('load'), offer.click()]);
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Typed just before');
    await page.goto('/technique/');
    expect(await heading(page)).toBe('New edition');
    expect(problemsOf(visit)).toEqual([]);
    writeFileSync(join(folder, 'technique/index.html'), old);
    writeFileSync(join(folder, '_astro', dialog), dialogText);
  });
});

describe('a limit that was withdrawn', () => {
  it('stops the batch as soon as it is known, on the page and on paper, and is not forgotten', async () => {
    const used = demos['country-terrine']?.process.cookRuleSetId;
    expect(used).toBeTruthy();
    const list = join(folder, 'limits-standing.json');
    const before = readFileSync(list, 'utf8');
    await using visit = await openPage('/worksheets/cook-log/#demo=country-terrine', { origin: origin() });
    const { page } = visit;
    await awake(page);
    const stop = page.locator('.limits-withdrawn');
    await page.waitForTimeout(500);
    expect(await stop.count()).toBe(0);
    const withdrawal = {
      stage: 'cook',
      ruleSetId: used,
      from: '2026-12-01',
      reason: 'Planted for this test.',
    };
    writeFileSync(list, JSON.stringify({ issued: '2026-12-01', withdrawn: [withdrawal] }));
    await page.evaluate(() => dispatchEvent(new Event('online')));
    await stop.waitFor();
    expect(await stop.textContent()).toMatch(/STOP.*withdrawn from 2026-12-01.*Planted for this test\./);

    // A file that cannot be read, or an older copy, takes nothing back.
    for (const text of ['<!doctype html>', before]) {
      writeFileSync(list, text);
      await page.reload({ waitUntil: 'networkidle' });
      await awake(page);
      await stop.waitFor();
    }
    await page.goto('/worksheets/batch-sheet/');
    await awake(page);
    await page.locator('.limits-withdrawn').waitFor();
    await expect
      .poll(() => page.locator('.worksheet').textContent(), { timeout: 20_000 })
      .toMatch(/CANNOT TELL\s*The rule set for cooking was withdrawn/);
    const paper = (await readPdf(await pdfOf(page, { format: 'A4' }))).map(({ text }) => text).join(' ');
    expect(paper).toMatch(/rule set for cooking was withdrawn from 2026-12-01/);
    writeFileSync(list, before);
    expect(visit.problems).toEqual([]);
  });
});

it('a device that is to save data is asked first, with the size', async () => {
  await using visit = await openPage('/404.html', { origin: origin(), keepsItself: true });
  const { page, context } = visit;
  await context.addInitScript(() =>
    Object.defineProperty(navigator, 'connection', { value: { saveData: true } }),
  );
  await page.goto('/cautions/');
  const keep = page.getByRole('button', { name: 'Keep it' });
  await keep.waitFor();
  expect(await page.locator('.kept-line').textContent()).toMatch(/without a network.*\d\.\d MB/);
  expect(
    await page.evaluate(() => navigator.serviceWorker.getRegistrations().then((all) => all.length)),
  ).toBe(0);
  await keep.click();
  await page.getByText(KEPT).waitFor({ timeout: 30_000 });
  expect(visit.problems).toEqual([]);
});

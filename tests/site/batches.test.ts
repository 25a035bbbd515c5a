import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { awake, field, saved, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const BATCHES = '/batches/';
const FORMULA = '/worksheets/batch-formula/';
const SHEET = '/worksheets/batch-sheet/';

const shelfOpen = (page: Page) => page.locator('.all-batches[data-shelf="open"]').waitFor();
const rows = (page: Page) => page.locator('#all-batches ~ .shelf .shelf-row');

/** Begins a batch on an empty bench. */
async function begin(page: Page, name: string): Promise<void> {
  await page.goto('/404.html');
  await page.goto(`${FORMULA}#new`);
  await awake(page);
  await field(page, 'Product').fill(name);
  await saved(page);
}

async function secondTab(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(path);
  await awake(page);
  return page;
}

describe('the page of batches', () => {
  it('finds, opens, copies on, archives, deletes and gives back, by keyboard and at 320 px', async () => {
    await using visit = await openPage(BATCHES, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await shelfOpen(page);
    expect(await page.locator('main').textContent()).toContain('Nothing is kept here yet');
    await begin(page, 'Hare terrine');
    await page.getByRole('button', { name: /^Give it \d{8}-A$/ }).click();
    await saved(page);
    await begin(page, 'Trout mousseline');
    await page.getByRole('button', { name: /^Give it \d{8}-B$/ }).click();
    await saved(page);
    await page.getByRole('link', { name: 'Batches', exact: true }).first().click();
    await shelfOpen(page);
    await expect.poll(() => rows(page).count()).toBe(2);
    await page.getByLabel('Find', { exact: true }).fill('hare');
    await expect.poll(() => rows(page).count()).toBe(1);
    expect(await sidewaysScrollPx(page)).toBe(0);

    await tabTo(page, /^Delete Hare terrine/);
    await page.keyboard.press('Enter');
    await expect.poll(() => rows(page).count()).toBe(0);
    await tabTo(page, 'Undo', 1);
    await page.keyboard.press('Enter');
    await expect.poll(() => rows(page).count()).toBe(1);

    await page.getByRole('button', { name: /^Archive Hare/ }).click();
    await expect.poll(() => rows(page).count()).toBe(0);
    await page.getByLabel('Show', { exact: true }).selectOption('archived');
    await page.getByRole('button', { name: /^Take back Hare/ }).click();
    await page.getByLabel('Show', { exact: true }).selectOption('in-use');
    await expect.poll(() => rows(page).count()).toBe(1);

    await page.getByRole('button', { name: /^Next batch like Hare/ }).click();
    await page.waitForURL(`**${FORMULA}`);
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Hare terrine');
    expect(await field(page, 'Batch number').inputValue()).toMatch(/^\d{8}-C$/);
    expect(visit.problems.filter((problem) => !problem.startsWith('404'))).toEqual([]);
  });

  it('follows a lot to where it went, takes the time, and prints the drill on one page', async () => {
    await using visit = await openPage(`${SHEET}#demo=country-terrine`);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await page.getByLabel('Customer, counter, store').fill('Quillstone Farm Shop');
    await page.getByLabel('How much').fill('12 portions');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await saved(page);
    const lot = await page.evaluate(async () => {
      const record = await fetch('/demo/country-terrine.json').then((answer) => answer.json());
      return record.formula.lines.map((line: { lot: string }) => line.lot).find(Boolean) as string;
    });
    await page.goto(BATCHES);
    await shelfOpen(page);
    await page.getByRole('button', { name: 'Start a drill' }).click();
    await page.getByLabel('Lot', { exact: true }).fill(lot.toLowerCase().replaceAll('-', ' '));
    const found = page.locator('#recall ~ * .shelf-row');
    await expect.poll(() => found.first().textContent()).toMatch(/Quillstone Farm Shop, 12 portions/);
    await page.getByRole('button', { name: 'All found: stop the clock' }).click();
    await expect.poll(() => page.locator('main').textContent()).toMatch(/Time taken: \d+ s/);
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toContain('Quillstone Farm Shop, 12 portions');
    expect(pages[0]?.text).toMatch(/Time taken\s*\d+ s/);
    await expectPrintable(page, pages, 'A4');
    expect(visit.problems).toEqual([]);
  });
});

describe('the state of a batch', () => {
  it('is released by two persons once every limit passes, held with a reason, and stands on the paper', async () => {
    await using visit = await openPage(`${SHEET}#demo=pate-en-croute-cooling-fails`);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    const state = page.getByLabel('Bring it into another state');
    await page.getByLabel('Who is at this bench').fill('JK');
    await state.selectOption('released');
    await page.getByLabel('Second person').fill('jk');
    await page.getByRole('button', { name: 'Release it' }).click();
    const refused = page.locator('[role=alert] .finding');
    await expect.poll(() => refused.textContent()).toMatch(/second person must be another/);
    expect(await refused.textContent()).toMatch(/FAIL/);
    await state.selectOption('held');
    await page.getByLabel('Why', { exact: true }).fill('Too slow from 57 to 21');
    await page.getByRole('button', { name: 'Hold it: nothing leaves' }).click();
    await expect.poll(() => page.locator('.state-now').textContent()).toMatch(/held: .*JK, Too slow/);
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    for (const { text } of pages) expect(text).toMatch(/HELD .* by JK: Too slow from 57 to 21/);
    await saved(page);
    await page.goto(BATCHES);
    await shelfOpen(page);
    expect(await rows(page).first().textContent()).toMatch(/heldJK/);
    expect(visit.problems).toEqual([]);
  });

  it('keeps a history of changed weights and signatures that prints by itself', async () => {
    await using visit = await openPage(`${SHEET}#demo=country-terrine`);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await page.getByLabel('Who is at this bench').fill('JK');
    await field(page, 'Finished mass, all moulds, after chilling').fill('3400');
    await saved(page);
    await page.getByText(/^\d+ changes?$/).click();
    await expect.poll(() => page.locator('table.figures').last().textContent()).toMatch(/3400 g.*JK/);
    await page.evaluate(() => {
      window.print = () => {};
    });
    await page.getByRole('button', { name: 'Print the history' }).click();
    await page.locator('.history-paper .sheet').waitFor({ state: 'attached' });
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toMatch(/History of changes.*finished weight.*3400 g/);
    expect(visit.problems).toEqual([]);
  });
});

describe('what is typed', () => {
  it('is there after the page was killed at any moment of it, but for the last half second', async () => {
    await using visit = await openPage(FORMULA);
    const { context } = visit;
    let { page } = visit;
    await awake(page);
    // Killed after so many letters: in a burst, between two writes of it, and a while after the first.
    for (const letters of [9, 17, 31]) {
      const product = field(page, 'Product');
      await product.fill('');
      const typed: { text: string; atMs: number }[] = [];
      for (const letter of 'Terrine of hare and pear, with prunes'.slice(0, letters)) {
        await product.press(letter);
        typed.push({ text: `${typed.at(-1)?.text ?? ''}${letter}`, atMs: Date.now() });
        await page.waitForTimeout(letter === ' ' ? 90 : 25);
      }
      const session = await context.newCDPSession(page);
      const crashed = page.waitForEvent('crash');
      const killedMs = Date.now();
      session.send('Page.crash').catch(() => {});
      await crashed;
      page = await secondTab(context, FORMULA);
      const owed = typed.findLast(({ atMs }) => killedMs - atMs >= 500)?.text ?? '';
      const kept = await field(page, 'Product').inputValue();
      expect(kept.startsWith(owed), `${letters} letters: "${kept}" of "${owed}" owed`).toBe(true);
    }
  });

  it('goes back and forth with Control Z, a field at a time', async () => {
    await using visit = await openPage(FORMULA);
    const { page } = visit;
    await awake(page);
    await field(page, 'Product').pressSequentially('Hare');
    await page.locator('.bench-tools').waitFor();
    await field(page, 'Kitchen').pressSequentially('Tarnwick');
    await page.keyboard.press('Control+z');
    await expect.poll(() => field(page, 'Kitchen').inputValue()).toBe('');
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => field(page, 'Kitchen').inputValue()).toBe('Tarnwick');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await saved(page);
    await page.reload();
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Hare');
    expect(await field(page, 'Kitchen').inputValue()).toBe('');
    expect(visit.problems).toEqual([]);
  });

  it('in two tabs is put together, and a field with two values is told in both words', async () => {
    await using visit = await openPage(FORMULA);
    const { page, context } = visit;
    await awake(page);
    await field(page, 'Product').fill('Hare terrine');
    await saved(page);
    const other = await secondTab(context, FORMULA);
    await field(other, 'Kitchen').fill('Tarnwick');
    await expect.poll(() => field(page, 'Kitchen').inputValue()).toBe('Tarnwick');
    await Promise.all([field(page, 'Product').fill('Hare pie'), field(other, 'Product').fill('Hare pâté')]);
    const told = (tab: Page) => tab.locator('.conflicts');
    await expect
      .poll(async () => (await told(page).count()) + (await told(other).count()))
      .toBeGreaterThan(0);
    const tab = (await told(page).count()) > 0 ? page : other;
    const choice = tab.getByRole('button', { name: /^The other: Hare (pie|pâté)$/ });
    const theirs = (await choice.textContent())?.replace('The other: ', '') ?? '';
    await choice.click();
    await expect.poll(() => field(page, 'Product').inputValue()).toBe(theirs);
    await expect.poll(() => field(other, 'Product').inputValue()).toBe(theirs);
  });
});

describe('a device that keeps nothing', () => {
  it('because it is full says so and gives the batch as a file', async () => {
    await using visit = await openPage(FORMULA);
    const { page } = visit;
    await awake(page);
    await field(page, 'Product').fill('Hare terrine');
    await saved(page);
    // What a browser does on a full disk.
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      const full = () => {
        throw new DOMException(
          'The current transaction exceeded its quota limitations.',
          'QuotaExceededError',
        );
      };
      IDBObjectStore.prototype.put = full;
      Object.assign(globalThis, {
        makeRoom: () => {
          IDBObjectStore.prototype.put = put;
        },
      });
    });
    await field(page, 'Product').fill('Hare terrine with pear');
    const message = page.locator('[role=alert]', { hasText: /is full|not keeping/ });
    await message.waitFor();
    const download = page.waitForEvent('download');
    await message.getByRole('button', { name: 'Save this batch to a file' }).click();
    expect((await download).suggestedFilename()).toMatch(/\.json$/);
    expect(await field(page, 'Product').inputValue()).toBe('Hare terrine with pear');
    await page.evaluate(() => (globalThis as unknown as { makeRoom: () => void }).makeRoom());
    await field(page, 'Kitchen').fill('Tarnwick');
    await message.waitFor({ state: 'detached' });
    await saved(page);
    await page.reload();
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Hare terrine with pear');
  });

  it('because the browser forbids it says so, keeps what is typed on screen, and gives it as a file', async () => {
    await using visit = await openPage('/404.html');
    const { page } = visit;
    await page.addInitScript(() => {
      Object.defineProperty(globalThis, 'indexedDB', {
        get: () => ({
          open: () => {
            throw new DOMException('The user denied permission', 'SecurityError');
          },
        }),
      });
    });
    await page.goto(FORMULA);
    await awake(page);
    const message = page.locator('[role=alert]', { hasText: 'lets this site keep nothing' });
    await message.waitFor();
    await field(page, 'Product').fill('Hare terrine');
    await message.getByRole('button', { name: 'Save this batch to a file' }).waitFor();
    expect(await field(page, 'Product').inputValue()).toBe('Hare terrine');
    await page.goto(BATCHES);
    await expect.poll(() => page.locator('main').textContent()).toContain('lets this site keep nothing');
  });

  it('sets a damaged record aside, whole, to be read and saved', async () => {
    await using visit = await openPage(FORMULA);
    const { page } = visit;
    await awake(page);
    await field(page, 'Product').fill('Hare terrine');
    await saved(page);
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const asked = indexedDB.open('larderwright');
          asked.onerror = () => reject(asked.error);
          asked.onsuccess = () => {
            const tx = asked.result.transaction('batches', 'readwrite');
            const store = tx.objectStore('batches');
            const all = store.getAll();
            all.onsuccess = () => store.put({ ...all.result[0], formula: 'torn' });
            tx.oncomplete = () => resolve();
          };
        }),
    );
    await page.reload();
    await awake(page);
    await page.getByText('could not be read (at formula)').waitFor();
    await page.goto(BATCHES);
    await shelfOpen(page);
    const aside = page.locator('#kept ~ .shelf .shelf-row', { hasText: 'Hare terrine' });
    await aside.getByText('What it holds').click();
    expect(await aside.locator('pre').textContent()).toContain('"torn"');
    const download = page.waitForEvent('download');
    await aside.getByRole('button', { name: 'Save to a file' }).click();
    expect((await download).suggestedFilename()).toMatch(/\.json$/);
  });
});

import { buffer } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { saved } from './bench.ts';
import { openPage, sidewaysScrollPx, type Visit } from './browser.ts';
import { pdfOf, printedCodes } from './pdf.ts';

const SHEET = '/worksheets/batch-sheet/';
const DESK = '/records/';
/** A name that would be markup if anything took it for that. */
const MARKUP = '<img src=x onerror=alert(1)><script>alert(2)</script>';
const DEMO = 'pate-en-croute-cooling-fails';

async function openDemo(slug: string): Promise<Visit> {
  const visit = await openPage(`${SHEET}#demo=${slug}`);
  await visit.page.locator('.verdict').first().waitFor();
  await saved(visit.page);
  return visit;
}

async function openDesk(page: Page): Promise<void> {
  await page.goto(DESK);
  await page.locator('[data-desk="open"] #bring-in').waitFor();
}

/** The text of the file that a click saves, and its name. */
async function savedBy(page: Page, button: RegExp): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return {
    name: download.suggestedFilename(),
    text: String(await buffer(await download.createReadStream())),
  };
}

/** Chooses a file on the desk. */
async function bring(page: Page, text: string, name = 'batches.json'): Promise<void> {
  const file = { name, mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.getByLabel(/A file of batches/).setInputFiles(file);
}

const rows = (page: Page) => page.locator('[data-incoming]');
const states = (page: Page) =>
  rows(page).evaluateAll((all) => all.map((row) => row.getAttribute('data-incoming')));

describe('records in and out', () => {
  it('saves, tables, brings in again beside what is here, and refuses what is damaged or meant to do harm', async () => {
    await using visit = await openDemo(DEMO);
    const { page } = visit;
    await openDesk(page);

    const formula = await savedBy(page, /^Formula/);
    expect(formula.name).toBe('20260421-A-Rabbit-tarragon-and-green-pepper-pâté-en-croûte-formula.csv');
    // Derived from the demo: 900 g of rabbit in 2,088.9 g.
    expect(formula.text).toMatch(
      /^\uFEFFLine,.*\r\n"Rabbit meat, trimmed",lean,900,g,entered,weight,900,43\.08487\d*,/,
    );
    await page.getByLabel('Decimals in the table').selectOption('comma');
    const readings = await savedBy(page, /^Readings/);
    expect(readings.text.split('\r\n')).toHaveLength(1 + 47 + 1);
    expect(readings.text).toContain(';8.2;°C;8,2;yes;');

    const { name, text } = await savedBy(page, /^Save this batch/);
    expect(name).toMatch(/-batch\.json$/);
    const file = JSON.parse(text) as { $schema: string; batches: Record<string, unknown>[] };
    const schema = await page.request.get(file.$schema);
    expect(schema.ok()).toBe(true);
    const [batch] = file.batches;
    if (!batch) throw new Error('no batch in the file');
    const changed = { ...batch, notes: 'changed elsewhere' };
    const others = [
      batch,
      changed,
      { ...batch, id: 'another', product: { ...(batch.product as object), name: MARKUP } },
      { ...batch, id: 'broken', product: {} },
      { ...batch, id: 'newer', schema: 999 },
    ];
    await bring(page, JSON.stringify({ ...file, batches: others }));
    await rows(page).first().waitFor();
    expect(await states(page)).toEqual(['same', 'differs', 'new', 'unreadable', 'unreadable']);
    await expect.poll(() => rows(page).nth(3).textContent()).toMatch(/Damaged: "product\./);
    expect(await rows(page).nth(2).textContent()).toContain(MARKUP);
    expect(await page.locator('main img, .worksheet script').count()).toBe(0);
    expect(await rows(page).nth(4).textContent()).toMatch(/newer version/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await sidewaysScrollPx(page)).toBe(0);
    await page.getByRole('button', { name: 'Take in 2 batches' }).click();
    await page.getByText('2 taken in, 3 left out').waitFor();
    expect(await page.getByLabel('Batch', { exact: true }).locator('option').count()).toBe(3);

    // What was learnt of an oven goes into the file of all there is, and comes back beside what is here.
    const oven = {
      name: 'Deck oven',
      at: '2026-04-21T12:00:00+02:00',
      filmFactor: 1.1,
      heatingFactor: 1,
      mediumShiftC: 2,
    };
    await page.evaluate((kept) => localStorage.setItem('larderwright.ovens', kept), JSON.stringify([oven]));
    const all = await savedBy(page, /^Save all/);
    const whole = JSON.parse(all.text) as { device: { ovens: (typeof oven)[] } };
    expect(whole.device.ovens).toEqual([oven]);
    const ovens = [
      oven,
      { ...oven, filmFactor: 1.3 },
      { ...oven, name: '<img src=x onerror=alert(1)>' },
      { name: 3 },
    ];
    await bring(page, JSON.stringify({ ...whole, batches: [], device: { ovens, clocks: 1 } }));
    await page.getByText('1 row beside the batches cannot be read').waitFor();
    expect(await page.locator('[data-incoming-oven]').allTextContents()).toMatchObject([
      expect.stringContaining('the same'),
      expect.stringContaining('with other figures'),
      expect.stringContaining('Not on this device yet'),
    ]);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await page.getByRole('button', { name: 'Take in 2 oven records' }).click();
    await page.getByText('2 oven records taken in').waitFor();
    const names = await page.evaluate(() => localStorage.getItem('larderwright.ovens'));
    expect(JSON.parse(names ?? '').map((each: { name: string }) => each.name)).toEqual([
      'Deck oven',
      'Deck oven (2)',
      '<img src=x onerror=alert(1)>',
    ]);

    const hostile: [string, RegExp][] = [
      ['', /empty/],
      ['{"a":1', /damaged or cut short, at line 1/],
      ['{"__proto__":{"x":1}}', /something that no batch holds/],
      ['[1,2,3]', /no file of batches/],
      [`${'['.repeat(100_000)}${']'.repeat(100_000)}`, /nested deeper/],
      [
        `{"format":"larderwright-batches","version":7,"batches":[]}`,
        /newer version of this site \(file version 7\)/,
      ],
    ];
    for (const [content, words] of hostile) {
      await bring(page, content);
      await expect.poll(() => page.locator('.field-problem').last().textContent()).toMatch(words);
    }
    // Made in the page: such a file would be long on its way there.
    await page.getByLabel(/A file of batches/).evaluate((input) => {
      const chosen = new DataTransfer();
      chosen.items.add(new File([new Uint8Array(30_000_001)], 'giant.json'));
      (input as HTMLInputElement).files = chosen.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    });
    await page.getByText(/giant.json: The file is too large.*30 million letters/).waitFor();
    expect(await page.getByLabel('Batch', { exact: true }).locator('option').count()).toBe(3);
    expect(visit.problems).toEqual([]);
  });

  it('hands a batch on in a link that no server sees, to be read and laid on another bench', async () => {
    await using visit = await openDemo(DEMO);
    await openDesk(visit.page);
    await visit.page.getByRole('button', { name: 'Make a link' }).click();
    const link = await visit.page.locator('.desk-link').inputValue();
    expect(link.length).toBeLessThanOrEqual(2_000);

    await using other = await openPage('/records/copy/');
    const { page } = other;
    await page.getByText('This address holds no batch').waitFor();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(`${link.slice(0, -9)}`);
    await page.getByText('was cut short or changed').waitFor();
    await page.goto(link);
    await page.locator('.verdict').first().waitFor();
    await page.reload();
    await page.locator('.verdict').first().waitFor();
    expect(asked.filter((url) => url.includes('#1.') || url.includes(link.slice(-40)))).toEqual([]);
    expect(await page.locator('.sheet-demo').allTextContents()).toContain('DEMO, invented · READER’S COPY');
    expect(await page.locator('.sheet').first().textContent()).not.toContain('Cold section');
    await page.getByRole('button', { name: 'Lay it on my bench' }).click();
    await page.getByRole('link', { name: /Go on with it/ }).click();
    await expect
      .poll(() => page.locator('.worksheet-batch').textContent())
      .toMatch(/Batch on the bench: Rabbit, tarragon.*DEMO/);
    expect(other.problems).toEqual([]);
  });

  it('prints a code at least 25 mm wide that finds its record, and says when that has changed or lies elsewhere', async () => {
    await using visit = await openDemo(DEMO);
    const { page } = visit;
    await page.locator('.sheet-code').first().waitFor();
    const codes = await printedCodes(await pdfOf(page, { format: 'A4' }));
    expect(codes.map((code) => code.page)).toEqual([1, 2]);
    for (const { sideMm, text } of codes) {
      expect(sideMm).toBeGreaterThanOrEqual(25);
      expect(text?.length).toBeLessThanOrEqual(120);
      expect(text).toMatch(new RegExp(`^${inject('siteOrigin')}/paper/#demo-${DEMO}\\.[0-9A-Z]{7}$`));
    }
    const address = codes[0]?.text ?? '';
    await saved(page);

    await page.goto('/worksheets/batch-formula/#new');
    await page.goto(address);
    await page.waitForURL(`**${SHEET}`);
    await page.getByText('Batch on the bench:').waitFor();

    await page.getByLabel(/^Use by/).fill('2026-05-01');
    await saved(page);
    await page.goto(address);
    await page.getByText('The record has changed since this sheet was printed').waitFor();

    await using other = await openPage(`/paper/#${address.split('#')[1]}`);
    await other.page.getByText('The record of this sheet is not on this device').waitFor();
    expect([...visit.problems, ...other.problems]).toEqual([]);
  });

  it('reads a logger’s file in any order of columns as the cook says, lists bad lines, and stays awake over 100,000', async () => {
    await using visit = await openPage('/worksheets/cook-log/#demo=trout-mousseline');
    const { page } = visit;
    await page.getByText('Paste a log, or load a logger').click();
    const load = (text: string) =>
      page
        .locator('.import input[type="file"]')
        .setInputFiles({ name: 'log.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    const head = '\uFEFFBath;Mid;Day;Clock;Deep\r\n';
    const line = (minute: number, deep: string) =>
      `176,0;14${minute},1;10.03.2026;10:${minute};15${minute - 20},2\r\n${deep}`;
    await load(`${head}${line(20, '')}${line(21, '')}${line(22, '')}176;140;ten;later;152\r\n`);
    await page.getByText('Choose the one that shows the core').waitFor();
    expect(await page.locator('.import-grid tbody td').first().textContent()).toBe('176,0');
    await page.getByLabel('Column of the core').selectOption({ label: 'Deep' });
    await page.getByText('Choose.', { exact: false }).first().waitFor();
    await page.getByLabel('Scale', { exact: true }).selectOption('F');
    const preview = page.locator('.import-preview');
    await expect.poll(() => preview.textContent()).toMatch(/Understood: ?3 readings.*in °F/);
    expect(await preview.textContent()).toMatch(/Line 5: left out, its time cannot be read: "later 152"/);
    expect(await page.locator('.import-role').allTextContents()).toEqual([
      ...['not used', 'not used', 'Date', 'Clock', 'Core'],
    ]);
    await page.getByLabel('Column of the core').selectOption({ label: 'Mid' });
    await expect.poll(() => preview.textContent()).toMatch(/1420,1/);
    await page.setViewportSize({ width: 320, height: 700 });
    expect(await sidewaysScrollPx(page)).toBe(0);
    await page.getByRole('button', { name: 'Put it away' }).click();

    const many = Array.from({ length: 100_000 }, (_, second) => {
      const at = new Date(Date.UTC(2026, 2, 10, 6) + second * 1000).toISOString();
      return `${second + 1},${at.slice(0, 10)} ${at.slice(11, 19)},${(70 * (1 - Math.exp(-second / 20_000))).toFixed(1)}`;
    });
    // A worker reads it: on the page itself the page would stand still all the while.
    const worker = page.waitForEvent('worker');
    await load(`No.,When,Core °C\n${many.join('\n')}\n`);
    await worker;
    await expect.poll(() => preview.textContent(), { timeout: 30_000 }).toMatch(/100000 readings/);
    expect(visit.problems).toEqual([]);
  });
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import {
  awake,
  expectAnswer,
  expectNoBrokenNumber,
  expectOddTextsKept,
  field,
  ODD_TIMEOUT_MS,
  saved,
  tabTo,
} from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/crust/';
const BASE = 'Base and walls, in one';

/** Two invented pies of 300 × 80 × 85 mm. */
async function pies(page: Page): Promise<void> {
  await awake(page);
  await page.getByRole('button', { name: 'Add a mould to the batch' }).click();
  await field(page, 'Length, inside').fill('300');
  await field(page, 'Width, inside').fill('80');
  await field(page, 'Depth, inside').fill('85');
  await field(page, 'How many').fill('2');
  // Common practice, no source: (L + 2H + 2o) × (W + 2H + 2o), overlap 20 mm.
  await expectAnswer(page, BASE, /^510 × 290\smm$/);
}

const findings = (page: Page) => page.locator('.finding').allTextContents();

describe('a crust from nothing', () => {
  it('by the keyboard alone at 320 px, cut and kept over a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Add a mould to the batch');
    await page.keyboard.press('Enter');
    await field(page, 'Length, inside').waitFor();
    await page.keyboard.press('Shift+Tab');
    await page.getByLabel('Shape', { exact: true }).focus();
    await tabTo(page, 'Length, inside');
    await page.keyboard.type('300');
    await tabTo(page, 'Width, inside');
    await page.keyboard.type('80');
    await tabTo(page, 'Depth, inside');
    await page.keyboard.type('85');
    await expectAnswer(page, BASE, /^510 × 290\smm$/);
    // Common practice, no source: (L + 2o) × (W + 2o).
    await expectAnswer(page, 'Lid', /^340 × 120\smm$/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, BASE, /^510 × 290\smm$/);
    expect(visit.problems).toEqual([]);
  });

  it('weighs pastry and paste for all, with chimneys and the room inside', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await pies(page);
    // Derived: 694 g of sheets at 4 mm and 1.2 g/mL, 12 % spare; twice that.
    await expectAnswer(page, 'Pastry for one', /^777\sg$/);
    await expectAnswer(page, 'Pastry for all', /^1[, \u202f\u00a0]?555\sg$/);
    // Common practice, no source: one to each 100 to 150 mm.
    await expectAnswer(page, 'Chimneys', /^2 to 3$/);
    // Derived: 292 × 72 × 77 mm.
    await expectAnswer(page, 'Room inside one crust', /^1\.62\sL$/);
    expect(await page.locator('.figures').textContent()).toMatch(/Flour.*100\.0.*Fat.*47\.5/s);
    await page.getByLabel('Paste', { exact: true }).selectOption('');
    await expectAnswer(page, 'Salt in the pastry', /Cannot tell/);
    await field(page, 'Salt of your own paste').fill('1');
    // Derived: 1 % of 1555 g.
    await expectAnswer(page, 'Salt in the pastry', /^15\.5\sg$/);
  });

  it('counts slices with the salt they bring, or caul', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await pies(page);
    await field(page, 'Width of a slice').fill('45');
    // Derived: (300 − 6) ÷ (45 − 6), rounded up.
    await expectAnswer(page, 'Slices for each mould', /^8$/);
    // Common practice, no source: 40 to 60 g to 1.2 L; derived for 2.04 L.
    await expectAnswer(page, 'Or caul for each mould', /^68 to 102 g$/);
    await field(page, 'One slice weighs').fill('20');
    await expect.poll(() => page.getByText(/their salt is unknown/).count()).toBe(1);
    await field(page, 'Salt of the slices').fill('3');
    await expect.poll(() => findings(page)).toContainEqual(expect.stringMatching(/bring 4\.8 g of salt/));
  });

  it('has no default answer, and warns of pastry that leaks', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await pies(page);
    await field(page, 'Thickness of base and walls').fill('2');
    await expect.poll(() => findings(page)).toContainEqual(expect.stringMatching(/under 3 mm it leaks/));
    await field(page, 'Depth, inside').fill('');
    await expectAnswer(page, BASE, /Cannot tell/);
    await expectAnswer(page, 'Pastry for all', /Cannot tell/);
    await expectNoBrokenNumber(page);
  });

  it('odd texts as the overlap are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await pies(page);
    await expectOddTextsKept(page, field(page, 'Overlap at the rim'), { answers: BASE });
  });

  it('breaks no accessibility rule and fits a phone', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await pies(page);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)('%s: one card with every input and its flag', async (format) => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await pies(page);
    await field(page, 'Width of a slice').fill('45');
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages).toHaveLength(1);
    await expectPrintable(page, pages, format);
    const text = pages[0]?.text ?? '';
    for (const wanted of [
      /300 ?mm ?E/,
      /4 ?mm ?D/,
      /20 ?mm ?D/,
      /45 ?mm ?E/,
      /510 × 290 ?mm ?W/,
      /340 × 120 ?mm ?W/,
      /Short paste/,
      /68 to 102 ?g ?W/,
      /common practice, no source/,
      /calc \d/,
      /it validates no process/,
    ]) {
      expect(text).toMatch(wanted);
    }
    expect(visit.problems).toEqual([]);
  });

  it('is an empty form where no script runs', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const pages = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toMatch(/Lining inside/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

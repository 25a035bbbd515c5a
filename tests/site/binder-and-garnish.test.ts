import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import {
  awake,
  expectAnswer,
  expectOddTextsKept,
  field,
  ODD_TEXTS,
  ODD_TIMEOUT_MS,
  saved,
  tabTo,
} from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/binder-and-garnish/';
const DEMO = `${PATH}#demo=country-terrine`;

const findings = (page: Page) => page.locator('.finding').allTextContents();

/** A bread panade of a tenth of 2.4 kg of meat. */
async function breadPanade(page: Page): Promise<void> {
  await field(page, 'Meat').fill('2400');
  await page.getByLabel('Kind of panade').selectOption('bread');
  await field(page, 'Weight of Milk').waitFor();
}

describe('a panade from nothing', () => {
  it('by the keyboard alone at 320 px, and it is there after a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Meat');
    await page.keyboard.type('2400');
    await tabTo(page, /^Kind of panade$/);
    await page.keyboard.press('ArrowDown');
    await field(page, 'Weight of Milk').waitFor();
    // Derived: 10 % of 2400 g.
    await expectAnswer(page, 'Panade, cooked and cold', /240\sg/);
    await expectAnswer(page, 'Panade of the meat', /10\.0\s%/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Panade, cooked and cold', /240\sg/);
    expect(visit.problems).toEqual([]);
  });

  it('tells the raw weight for the share, and believes the scale', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await breadPanade(page);
    // Derived: 240 ÷ 0.95 with the usual loss of bread (from memory, no source).
    await expectAnswer(page, 'For the share wanted', /^253\sg raw, 240\sg cooked$/);
    await field(page, 'Panade cooked and cold, weighed').fill('600');
    // Above 20 % of the meat it tastes of bread: common practice, no source.
    await expectAnswer(page, 'Panade of the meat', /25\.0\s%/);
    await expect
      .poll(() => findings(page))
      .toContainEqual(expect.stringMatching(/Panade is 25 % of the meat/));
  });

  it('names wheat and milk, and cautions at a warm panade', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await breadPanade(page);
    await field(page, 'Temperature of the panade at mixing').fill('12');
    await expect
      .poll(() => findings(page))
      .toContainEqual(expect.stringMatching(/carry allergens:.*gluten.*milk.*United States list:.*wheat/s));
    // At most 4 °C, harm above 7 °C: common practice, no source.
    await expect
      .poll(() => findings(page))
      .toContainEqual(expect.stringMatching(/Panade at 12 °C \(54 °F\)/));
  });
});

describe('garnish', () => {
  it('counts pieces in a slice and warns of pieces too large for the mould', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await awake(page);
    await page.getByRole('button', { name: 'Add a garnish' }).click();
    await field(page, 'Garnish 1, as bought').fill('200');
    await field(page, 'Left after preparing, Garnish 1').fill('80');
    // Derived: 200 g × 80 %.
    await expectAnswer(page, 'Garnish 1 into the bowl', /160\sg/);
    await expectAnswer(page, 'Garnish 1: pieces in a slice, on average', /^\d+\.\d$/);
    await field(page, 'Size of a piece, Garnish 1').fill('30');
    // A third of the smaller side: common practice, no source. The mould is filled 65 mm deep.
    await expect
      .poll(() => findings(page))
      .toContainEqual(expect.stringMatching(/Garnish: pieces of 30 mm in a mould of 65 mm/));
  });

  it('shows the federal limit on binders only where it applies', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await awake(page);
    await page.getByRole('button', { name: 'Add a binder' }).click();
    await field(page, 'Weight of Binder 1').fill('300');
    expect(await page.locator('.verdict').count()).toBe(0);
    await page.getByLabel('Sold in the United States as a sausage').selectOption('yes');
    // 9 CFR 319.140: binders and extenders up to 3.5 % of the finished product. 300 g of some 3.9 kg is more.
    await expect
      .poll(() => page.locator('.verdict').allTextContents())
      .toContainEqual(expect.stringMatching(/3\.5 %/));
  });
});

describe('into the formula', () => {
  it('writes its lines once, at the cooked weight, and gives the old ones back', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await awake(page);
    await page.getByLabel('Kind of panade').selectOption('rice');
    const write = page.getByRole('button', { name: 'Write these lines into the formula' });
    await write.click();
    const undo = page.getByRole('button', { name: 'Put the old lines back' });
    await undo.waitFor();
    expect(await undo.evaluate((button) => button === document.activeElement)).toBe(true);
    await expect.poll(() => write.count()).toBe(0);
    await saved(page);
    await page.goto('/worksheets/batch-formula/');
    const names = () =>
      page
        .getByRole('combobox', { name: 'Ingredient' })
        .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
    await expect.poll(names).toContain('Rice, raw');
    await page.goto(PATH);
    await field(page, 'Weight of Rice, raw').waitFor();
    await expectAnswer(page, 'Panade of the meat', /10\.0\s%/);
    expect(await write.count()).toBe(0);
    expect(visit.problems).toEqual([]);
  });
});

describe('on screen and paper', () => {
  // Five kilograms may well be spelt so.
  it('odd texts as a weight are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await breadPanade(page);
    await expectAnswer(page, 'Panade, cooked and cold', /240\sg/);
    await expectOddTextsKept(page, field(page, 'Weight of Milk'), {
      answers: 'Panade, cooked and cold',
      texts: ODD_TEXTS.filter((text) => text !== '5 kgs'),
      quoted: true,
    });
  });

  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await awake(page);
    await breadPanade(page);
    await page.getByRole('button', { name: 'Add a garnish' }).click();
    await field(page, 'Garnish 1, as bought').waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it('prints the list for preparing with parts, shares and a time to be cold by', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await breadPanade(page);
    await expect.poll(() => page.locator('.card').textContent()).toMatch(/White bread/);
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    await expectPrintable(page, pages, 'A4');
    const text = pages.map((sheet) => sheet.text).join(' ');
    expect(text).toMatch(/2400 g ?E/);
    expect(text).toMatch(/Cold \(4 °C, 39 °F or below\) by/);
    expect(text).toMatch(/White bread, crusts off \d+(\.\d)? g ?D/);
  });
});

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

const PATH = '/worksheets/label/';
const TERRINE = `${PATH}#demo=country-terrine`;

const lists = (page: Page) => page.locator('.label-list').allTextContents();
const standingOut = (page: Page) => page.locator('.label-list').first().locator('strong').allTextContents();
const stops = (page: Page) => page.locator('.finding[data-severity="stop"]').allTextContents();

/** An invented pie of two things, written by hand. */
async function pie(page: Page): Promise<void> {
  await awake(page);
  await page.getByLabel('Lost in the cook').selectOption('nothing');
  const rows = [
    ['pork', '600', 'pork shoulder, salt'],
    ['crust', '400', 'wheat flour, butter, water'],
  ] as const;
  for (const [place, [name, grams, madeOf]] of rows.entries()) {
    await page.getByRole('button', { name: 'Add what is not in the formula' }).click();
    const row = page.locator('section.mould').nth(place);
    await field(row, 'Name in the list').waitFor();
    await field(row, 'Name in the list').fill(name);
    await field(row, 'Weight in the food').fill(grams);
    await field(row, 'Made of').fill(madeOf);
  }
}

describe('a label from nothing', () => {
  it('by the keyboard alone at 320 px, kept over a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Name of the food');
    await page.keyboard.type('Pork pie');
    await tabTo(page, 'Lost in the cook');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'Add what is not in the formula');
    await page.keyboard.press('Enter');
    await field(page, 'Name in the list').waitFor();
    await field(page, 'Name in the list').focus();
    await page.keyboard.type('crust');
    await tabTo(page, 'Weight in the food');
    await page.keyboard.type('400');
    await tabTo(page, 'Made of');
    await page.keyboard.type('flour, lard, cream');
    await tabTo(page, 'Allergens of crust');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'Cereals containing gluten');
    await page.keyboard.press('Space');
    await tabTo(page, 'Milk');
    await page.keyboard.press('Space');
    // Regulation (EU) No 1169/2011, article 21: the allergen stands out, named where the ingredient does not say it.
    await expect
      .poll(() => lists(page))
      .toContainEqual('crust (flour, lard, cream) (cereals containing gluten, milk)');
    expect(await standingOut(page)).toEqual(['cream', 'cereals containing gluten', 'milk']);
    await tabTo(page, 'Cooked on');
    await page.keyboard.type('03102026');
    // Derived: five days by default, the day of the cook as day one.
    await expectAnswer(page, 'Use by', /^2026-03-14$/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Use by', /^2026-03-14$/);
    await expect.poll(() => lists(page)).toContainEqual(expect.stringContaining('crust (flour'));
    expect(visit.problems).toEqual([]);
  });

  it('asks for allergens until somebody has read the pack', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await pie(page);
    const verdict = page.locator('.verdict').first();
    await expect.poll(() => verdict.getAttribute('data-state')).toBe('cannot-tell');
    for (const name of ['pork', 'crust']) await page.getByLabel(`Allergens of ${name}`).selectOption('read');
    await page.getByLabel('Cereals containing gluten').last().check();
    await expect.poll(() => verdict.getAttribute('data-state')).toBe('pass');
    await expect
      .poll(() => lists(page))
      .toContainEqual(expect.stringMatching(/^pork \(pork shoulder, salt\), crust/));
    expect(visit.problems).toEqual([]);
  });
});

describe('the label of a batch', () => {
  it('falls by weight, names the animals and the preservative, and lets allergens stand out', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await expect
      .poll(() => lists(page))
      .toContainEqual(
        expect.stringMatching(/^venison, pork fat, pork, pork liver.*preservative: sodium nitrite \(E 250\)/),
      );
    expect(await standingOut(page)).toEqual(expect.arrayContaining(['milk', 'wheat', 'egg']));
    expect(visit.problems).toEqual([]);
  });

  it('cannot tell the share of meat without its collagen, and tells it with', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    const slip = page.locator('.label-slip').filter({ hasText: 'Venison' }).first();
    await slip.locator('summary').first().click();
    await slip.getByLabel(/^Does the name of the food stress/).selectOption('yes');
    await page.getByLabel('Lost in the cook').selectOption('water');
    await field(page, 'Finished weight, after chilling').fill('3497');
    await field(page, 'Mix that went into the moulds').fill('3720');
    const quantities = page.locator('table.figures', { hasText: 'Declare' }).first();
    await expect.poll(() => quantities.textContent()).toMatch(/CANNOT TELL: at most 28 %/);
    await slip.getByRole('textbox', { name: /^Collagen of/ }).fill('1.5');
    // Derived: 1000 g × 3720 ÷ 3850.1 ÷ 3497 g = 27.6 %, fat and collagen of venison inside both limits.
    await expect.poll(() => quantities.textContent()).toMatch(/venison28 %/);
    await expectNoBrokenNumber(page);
  });

  it('tells nutrition by both roundings once the loss is known, and says what it leans on', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await page.getByLabel('Lost in the cook').selectOption('water');
    await field(page, 'Finished weight, after chilling').fill('3497');
    const eu = page.locator('table.figures', {
      has: page.getByText('European Union and United Kingdom', { exact: true }),
    });
    const us = page.locator('table.figures', { has: page.getByText(/^United States, serving 55 g$/) });
    // Derived: 24.8 % fat by the formula on the 3720 g the moulds weighed, ÷ 3497 g: 26.4 g, printed whole; 14.5 g in 55 g.
    await expect.poll(() => eu.locator('tr', { hasText: /^Fat/ }).textContent()).toMatch(/Fat26 g15 g/);
    await expect
      .poll(() => us.locator('tr', { hasText: /^Total fat/ }).textContent())
      .toMatch(/Total fat15 g19 %22 %/);
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(expect.stringMatching(/rounded figures of the kitchen/));
    await page.getByLabel('Lost in the cook').selectOption('juices');
    await expect.poll(() => eu.count()).toBe(0);
  });

  it('stops a long life under vacuum, a best-before, and a hospital; paper carries the stops', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await field(page, 'Life from the cook').waitFor();
    await page.getByLabel('Pack', { exact: true }).selectOption('vacuum');
    await field(page, 'Life from the cook').fill('21');
    await expect.poll(() => stops(page)).toContainEqual(expect.stringMatching(/21 days sealed without air/));
    await page.getByLabel('Kind of date').selectOption('best-before');
    await page.getByLabel('Eaten by').selectOption('susceptible');
    await expect.poll(async () => (await stops(page)).length).toBe(3);
    await expect.poll(() => page.locator('.sheet-stops li').count()).toBe(3);
    // Packing again moves nothing.
    await page.getByLabel('Packed on').fill('2027-01-01');
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(expect.stringMatching(/still counted from the cook/));
  });

  it('odd texts as a life are kept and never counted with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await expectAnswer(page, 'Use by', /^\d{4}-\d{2}-\d{2}$/);
    await expectOddTextsKept(page, field(page, 'Life from the cook'), { answers: 'Use by' });
  });

  it('fits a phone and breaks no accessibility rule, opened too', async () => {
    await using visit = await openPage(TERRINE, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await page.locator('.label-slip').first().waitFor();
    await page.getByLabel('Lost in the cook').selectOption('water');
    await field(page, 'Finished weight, after chilling').fill('3497');
    await page.locator('details').evaluateAll((all) => {
      for (const one of all) one.setAttribute('open', '');
    });
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it('writes the date on the batch sheet, where a later one fails', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    const verdict = page.locator('section[aria-labelledby="keeping"] .verdict');
    await expect.poll(() => verdict.getAttribute('data-state')).toBe('cannot-tell');
    await field(page, 'Life from the cook').fill('4');
    await expectAnswer(page, 'Use by', /^2026-03-13$/);
    await page.getByRole('button', { name: 'Write it on the batch sheet' }).click();
    await expect.poll(() => verdict.getAttribute('data-state')).toBe('pass');
    await field(page, 'Life from the cook').fill('2');
    await expect.poll(() => verdict.getAttribute('data-state')).toBe('fail');
    await saved(page);
    await page.goto('/worksheets/batch-sheet/');
    await expect.poll(() => page.locator('.sheet-stops').first().textContent()).toMatch(/is too late/);
    expect(visit.problems).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)('%s: the proof with every input and its flag', async (format) => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await page.getByLabel('Lost in the cook').selectOption('water');
    await field(page, 'Finished weight, after chilling').fill('3497');
    await field(page, 'Name of the food').fill('Venison and pork terrine');
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    await expect.poll(() => page.locator('.card').textContent()).toMatch(/venison, pork fat, pork/);
    const pages = await readPdf(await pdfOf(page, { format }));
    await expectPrintable(page, pages, format);
    const text = pages.map((one) => one.text).join(' ');
    for (const wanted of [
      /Label proof/,
      /Venison and pork terrine/,
      /3497 ?g ?E/,
      /MILK/,
      /5 ?d ?D/,
      /sodium nitrite \(E 250\)/,
      /not legal advice/,
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
    expect(pages[0]?.text).toMatch(/Label proof/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

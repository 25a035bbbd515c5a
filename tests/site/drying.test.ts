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

const PATH = '/worksheets/drying/';
const PLAN = /Stop: this needs an accepted plan/;

const planStop = (page: Page) => page.locator('.plan-stop');
const verdictTexts = (page: Page) => page.locator('.verdict').allTextContents();
const states = (page: Page) =>
  page.locator('.verdict').evaluateAll((all) => all.map((one) => one.getAttribute('data-state')));

/** An invented sausage: 55 hours at 80 °F, 2 kg that has lost a fifth. */
async function sausage(page: Page): Promise<void> {
  await awake(page);
  await page.getByLabel('What is dried').selectOption('fermented-sausage');
  await page.getByLabel('Degree-hour rule').selectOption('us-fahrenheit');
  await page.getByRole('button', { name: 'Add a stretch' }).click();
  await page.getByLabel('Unit of Chamber at, stretch 1').selectOption('F');
  await field(page, 'Chamber at, stretch 1').fill('80');
  await field(page, 'For, stretch 1').fill('55');
  await field(page, 'Weight when drying began').fill('2000');
  await field(page, 'Weight now').fill('1600');
  await field(page, 'Weight to lose').fill('35');
  await field(page, 'Salt at the start').fill('2.8');
  await field(page, 'Moisture at the start').fill('58');
  await field(page, 'Protein at the start').fill('16');
}

describe('the accepted plan', () => {
  it('is asked for on top, before any script, and whatever is written below', async () => {
    await using bare = await openPage(PATH, { javaScript: false });
    expect(await planStop(bare.page).textContent()).toMatch(PLAN);
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await page.getByLabel('pH 5.3 by the end of the last stretch').selectOption('yes');
    await expect.poll(() => states(page)).toContain('pass');
    expect(await planStop(page).textContent()).toMatch(PLAN);
    const [stop, first] = await page.evaluate(() =>
      ['.plan-stop', '.worksheet .field'].map(
        (at) => document.querySelector(at)?.getBoundingClientRect().top ?? 0,
      ),
    );
    expect(stop).toBeLessThan(first ?? 0);
  });

  it('named, it is named in the stop, which stays a stop and never becomes a pass', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await field(page, 'Accepted plan, by name or number').fill('Skerrow 7');
    await expect
      .poll(() => planStop(page).textContent())
      .toMatch(/STOP.*only by the accepted plan "Skerrow 7"/s);
    const plan = (await verdictTexts(page)).filter((text) => /accepted plan/.test(text));
    expect(plan).toHaveLength(1);
    expect(plan[0]).toMatch(/^CANNOT TELL/);
  });

  it('is a stop on the batch sheet once something is dried', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await saved(page);
    await page.goto('/worksheets/batch-sheet/');
    await expect.poll(() => page.locator('.sheet-stops').first().textContent()).toMatch(PLAN);
    expect(visit.problems).toEqual([]);
  });
});

describe('a lot from nothing', () => {
  it('by the keyboard alone at 320 px, counted and kept over a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'What is dried');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'Degree-hour rule');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'Add a stretch');
    await page.keyboard.press('Enter');
    await field(page, 'Chamber at, stretch 1').waitFor();
    await page.getByLabel('Degree-hour rule').focus();
    await tabTo(page, 'Chamber at, stretch 1');
    await page.keyboard.type('80 F');
    await tabTo(page, 'For, stretch 1');
    await page.keyboard.type('55');
    // Good Manufacturing Practices for Fermented Dry and Semi-Dry Sausage: (80 − 60) × 55 = 1100, of 1200 below 90 °F (limit from memory).
    await expectAnswer(page, 'Degree-hours so far', /^1100 of 1200 °F hours$/);
    await tabTo(page, 'Weight when drying began');
    await page.keyboard.type('2000');
    await tabTo(page, 'Weight now');
    await page.keyboard.type('1600');
    await expectAnswer(page, 'Lost so far', /20\.0 %/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await expectNoBrokenNumber(page);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Degree-hours so far', /^1100 of 1200 °F hours$/);
    expect(visit.problems).toEqual([]);
  });

  it('runs on until pH 5.3, and fails with a stop to hold it once the count is over', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await expect
      .poll(() => verdictTexts(page))
      .toContainEqual(expect.stringMatching(/CANNOT TELL.*So far 1100 of 1200/s));
    await field(page, 'For, stretch 1').fill('61');
    // Derived: 20 × 61 = 1220.
    await expect.poll(() => verdictTexts(page)).toContainEqual(expect.stringMatching(/FAIL.*1220 of 1200/s));
    await expect
      .poll(() => page.locator('.finding[data-severity="stop"]').allTextContents())
      .toContainEqual(expect.stringMatching(/hold this lot/));
    await expect.poll(() => page.locator('.sheet-stops').textContent()).toMatch(/hold this lot/);
  });

  it('cannot tell with a stretch half written', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await page.getByRole('button', { name: 'Add a stretch' }).click();
    await expectAnswer(page, 'Degree-hours so far', /Cannot tell/);
    await expect.poll(() => states(page)).not.toContain('pass');
  });

  it('is estimated from salt and water, said to be an estimate, and gives way to an instrument', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    const target = page.locator('table.figures tr', { hasText: 'At the loss wanted' });
    // Derived: 2.8 ÷ (2.8 + 58 − 35) = 10.85 % on the water.
    await expect.poll(() => target.textContent()).toMatch(/10\.85 %.*0\.9[23]\d to 0\.9[23]\d/s);
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(expect.stringMatching(/Only an instrument decides/));
    await field(page, 'Water activity, measured').fill('92');
    await expect
      .poll(() => page.locator('.field-problem').allTextContents())
      .toContainEqual(expect.stringMatching(/no water activity/));
    await field(page, 'Water activity, measured').fill('0.88');
    const staph = page.locator('table.figures tr', { hasText: 'Staphylococcus grows' });
    await expect.poll(() => staph.textContent()).toMatch(/not below/);
  });

  it('counts the days against Trichinella by casing and salt', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await page.getByLabel('Unit of Casing across, stuffed').selectOption('in');
    await field(page, 'Casing across, stuffed').fill('3');
    await field(page, 'All of the mix').fill('127.872');
    await field(page, 'Dry ingredients in it').fill('6.372');
    await field(page, 'Salt in it').fill('3.56');
    // 9 CFR 318.10(c)(3)(i), method 6: 20 days for 3 in; salt of 2.93, cut to 2.9, adds 13 %.
    await expectAnswer(page, 'Salt, as that rule counts it', /2\.92 lb|2\.93 lb/);
    await expectAnswer(page, 'Least days in the drying room', /^23 days$/);
  });

  it('odd texts as hours are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await expectOddTextsKept(page, field(page, 'For, stretch 1'), { answers: 'Degree-hours so far' });
  });
});

describe('on a phone and on paper', () => {
  it('fits 320 px and breaks no accessibility rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await sausage(page);
    await page.locator('.verdict').first().waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it.each(['A4', 'Letter'] as const)('%s: a card with every input, the stop first', async (format) => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await sausage(page);
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages).toHaveLength(1);
    await expectPrintable(page, pages, format);
    const text = pages[0]?.text ?? '';
    for (const wanted of [
      /STOP Stop: this needs an accepted plan/,
      /80\s?°F\s?E/,
      /55\s?h\s?E/,
      /1100 of 1200/,
      /2000\s?g\s?E/,
      /35\s?%\s?E/,
      /20\.0\s?%/,
      /1300\s?g\s?W/,
      /CANNOT TELL/,
      /it validates no process/,
    ]) {
      expect(text).toMatch(wanted);
    }
  });

  it('is an empty form where no script runs, with the stop on it', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const pages = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toMatch(/STOP Stop: this needs an accepted plan/);
    expect(pages[0]?.text).toMatch(/Fermentation, to pH 5\.3/);
  });
});

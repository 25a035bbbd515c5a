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

const PATH = '/worksheets/trim-and-yield/';
const DEMO = `${PATH}#demo=country-terrine`;
const PILES = ['Trimmed lean', 'Usable fat', 'Garnish pieces', 'Skin and bone', 'Sinew, glands and waste'];

/** Writes one trial: bought in kg, then every pile in g. */
async function weigh(page: Page, trial: number, bought: string, piles: readonly string[]): Promise<void> {
  const box = page.locator('.trial').nth(trial);
  await field(box, 'As bought').fill(bought);
  for (const [index, massG] of piles.entries()) await field(box, PILES[index] ?? '').fill(massG);
}

/** A test of an invented shoulder, two trials. */
async function shoulder(page: Page): Promise<void> {
  await awake(page);
  await page.getByRole('button', { name: 'Begin a test' }).click();
  await field(page, 'Species, cut, supplier').fill('Pork shoulder, bone in');
  await field(page, 'Price as bought').fill('6');
  await page.getByRole('button', { name: 'Add a trial' }).click();
  await weigh(page, 0, '10', ['7000', '2000', '0', '0', '900']);
  await weigh(page, 1, '10', ['7200', '1800', '0', '0', '900']);
  await field(page.getByRole('listitem', { name: 'Usable fat' }), 'Saves elsewhere, the kg').fill('1.50');
  await field(page.getByRole('listitem', { name: 'Skin and bone' }), 'Saves elsewhere, the kg').fill('0');
}

describe('a trim test from nothing', () => {
  it('by the keyboard alone at 320 px', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Begin a test');
    await page.keyboard.press('Enter');
    // The new test has the focus, on its name.
    await page.locator('.trim-test :focus').waitFor();
    await page.keyboard.type('Shoulder');
    for (const [label, text] of [
      ['As bought', '10'],
      ['Trimmed lean', '7000'],
      ['Usable fat', '2000'],
      ['Garnish pieces', '0'],
      ['Skin and bone', '0'],
      ['Sinew, glands and waste', '900'],
    ] as const) {
      await tabTo(page, label);
      await page.keyboard.type(text);
    }
    // Derived: 7 of 10 kg, 100 g in no pile.
    await expectAnswer(page, 'Yield, the mean of the trials', /^70\.0 %$/);
    await expectAnswer(page, 'In no pile', /^1\.0 %$/);
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(expect.stringMatching(/one trial is not a norm/));
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Yield, the mean of the trials', /^70\.0 %$/);
    expect(visit.problems).toEqual([]);
  });
});

describe('several trials', () => {
  it('give mean, spread, cost of the usable kilogram and what to buy', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await shoulder(page);
    await field(page, 'Trimmed weight wanted').fill('7');
    // Derived: 70 and 72 %.
    await expectAnswer(page, 'Yield, the mean of the trials', /^71\.0 %$/);
    await expect
      .poll(() => page.locator('.answer', { hasText: 'Yield, the mean' }).textContent())
      .toMatch(/70\.0 % to 72\.0 %, standard deviation 1\.4 %, 2 trials/);
    // Derived: (60 − 3) ÷ 7 = 8.143 and (60 − 2.7) ÷ 7.2 = 7.958, mean 8.05.
    await expectAnswer(page, 'Cost of a usable kilogram', /^8\.05$/);
    // Derived: 7 ÷ 0.71 and 7 ÷ 0.70.
    await expectAnswer(page, 'To buy, at the mean yield', /9859\sg/);
    await expectAnswer(page, 'To buy, to be safe', /10.?000\sg/);
    expect(visit.problems).toEqual([]);
  });

  it('take a new pile into every trial, and leave what is blank unknown', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await shoulder(page);
    await expectAnswer(page, 'In no pile', /^1\.0 %$/);
    await page.getByRole('button', { name: 'Add a pile' }).click();
    await field(page.getByRole('listitem', { name: 'pile 6' }), 'Pile').fill('Rind');
    await expectAnswer(page, 'In no pile', /Cannot tell/);
    await field(page.locator('.trial').nth(0), 'Rind').fill('50');
    await field(page.locator('.trial').nth(1), 'Rind').fill('50');
    await expectAnswer(page, 'In no pile', /^0\.50 %$|^0\.5 %$/);
  });

  it('give their yield to a line of the plan', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await shoulder(page);
    await expectAnswer(page, 'Yield, the mean of the trials', /^71\.0 %$/);
    await page
      .getByLabel(/Line of the formula cut from/)
      .selectOption({ label: 'Venison shoulder, trimmed' });
    await page.getByRole('button', { name: 'Use 71 % in the plan' }).click();
    await expect
      .poll(() => page.locator('[role=status]').allTextContents())
      .toContainEqual(expect.stringMatching(/now counts 71 % yield for Venison/));
    await saved(page);
    await page.goto('/worksheets/plan-and-cost/', { waitUntil: 'networkidle' });
    const line = page.getByRole('listitem', { name: 'Venison shoulder, trimmed' });
    await line.waitFor();
    expect(await field(line, 'Yield after trim').inputValue()).toBe('71');
    expect(visit.problems).toEqual([]);
  });

  // "5 kgs" is a weight.
  it('odd texts as a weight are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await shoulder(page);
    await expectOddTextsKept(page, field(page.locator('.trial').nth(0), 'Trimmed lean'), {
      answers: 'Yield, the mean of the trials',
      // The other trial still stands, alone.
      refused: /^72\.0 %$/,
      texts: ODD_TEXTS.filter((odd) => odd !== '5 kgs'),
    });
  });

  it('fit a phone and break no accessibility rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await shoulder(page);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)('%s: the butcher’s test with room to sign', async (format) => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await shoulder(page);
    await expectAnswer(page, 'Yield, the mean of the trials', /^71\.0 %$/);
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages).toHaveLength(1);
    await expectPrintable(page, pages, format);
    for (const wanted of [
      /Pork shoulder, bone in/,
      /7000 ?E/,
      /71\.0 % ?W/,
      /6 \/ kg ?E/,
      /Tested by/,
      /calc \d/,
      /it validates no process/,
    ]) {
      expect(pages[0]?.text ?? '').toMatch(wanted);
    }
    expect(visit.problems).toEqual([]);
  });

  it('is an empty form where no script runs', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const pages = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toMatch(/Skin and bone/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

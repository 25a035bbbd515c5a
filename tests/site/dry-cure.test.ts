import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import {
  answer,
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

const PATH = '/worksheets/dry-cure/';
const DOSE = 'Curing salt for the nitrite wanted';

const verdicts = (page: Page) =>
  page.locator('.verdict').evaluateAll((all) => all.map((one) => one.getAttribute('data-state')));

/** An invented belly of 5 kg under the rule of the United States, its pack read, its scale known. */
async function belly(page: Page): Promise<void> {
  await awake(page);
  await page.getByLabel('Whose rule on nitrite').selectOption('us-federal');
  await page.getByLabel('What it is').selectOption('bacon');
  await page.getByLabel('How it is eaten').selectOption('cook-before-eating');
  await field(page, 'Smallest step of the scale').fill('0.1');
  await field(page, 'Nitrite wanted, as sodium nitrite').fill('120');
  await field(page, 'Sodium nitrite in it, by the pack').fill('6.25');
  await field(page, 'Nitrate in it, by the pack').fill('0');
  await page.getByLabel('Into the cure on').fill('2026-11-02');
  await page.getByRole('button', { name: 'Add a piece' }).click();
  await field(page, 'Name of the piece').fill('Belly');
  await field(page, 'Weight without skin').fill('5000');
  await field(page, 'Thickest place').fill('40');
  await expectAnswer(page, DOSE, /^Weigh 9\.6\sg$/);
}

describe('a dry cure from nothing', () => {
  it('by the keyboard alone at 320 px, dosed and kept over a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Whose rule on nitrite');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'What it is');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'Smallest step of the scale');
    await page.keyboard.type('0.1');
    await tabTo(page, 'Nitrite wanted, as sodium nitrite');
    await page.keyboard.type('120');
    await tabTo(page, 'Sodium nitrite in it, by the pack');
    await page.keyboard.type('6.25');
    await tabTo(page, 'Nitrate in it, by the pack');
    await page.keyboard.type('0');
    await tabTo(page, 'Add a piece');
    await page.keyboard.press('Enter');
    await field(page, 'Weight without skin').waitFor();
    await field(page, 'Name of the piece').focus();
    await tabTo(page, 'Weight without skin');
    await page.keyboard.type('5000');
    await tabTo(page, 'Thickest place');
    await page.keyboard.type('40');
    // Derived: 120 mg/kg × 5 kg ÷ 62.5 mg/g.
    await expectAnswer(page, DOSE, /^Weigh 9\.6\sg$/);
    // Derived: 2.5 % of 5 kg less 9.6 g × 0.9375.
    await expectAnswer(page, 'Plain salt', /^Weigh 116\sg$/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, DOSE, /^Weigh 9\.6\sg$/);
    expect(visit.problems).toEqual([]);
  });

  it('gives no dose until rule, product, strength and scale are there, and no pass before that', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    await expect.poll(async () => new Set(await verdicts(page))).toEqual(new Set(['pass']));
    await field(page, 'Smallest step of the scale').fill('');
    await expectAnswer(page, DOSE, /smallest step of the scale/);
    await field(page, 'Sodium nitrite in it, by the pack').fill('');
    await expectAnswer(page, DOSE, /strength off the pack/);
    await page.getByLabel('What it is').selectOption('');
    await expectAnswer(page, DOSE, /say what it is/);
    await page.getByLabel('Whose rule on nitrite').selectOption('');
    await expectAnswer(page, DOSE, /choose whose rule/);
    await expect.poll(() => verdicts(page)).toContain('cannot-tell');
    await expectNoBrokenNumber(page);
  });
});

describe('the pieces', () => {
  it('are weighed on the scale: twenty grams of a 6.25 % pack to the kilogram is a stop that names the piece', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    await field(page, 'Curing salt, as weighed').fill('100');
    // Derived: 100 g × 62.5 mg/g on 5 kg.
    await expect
      .poll(() => page.locator('.finding[data-severity="stop"]').allTextContents())
      .toContainEqual(expect.stringMatching(/Belly: 1250 mg\/kg.*poison/s));
    await expect.poll(() => verdicts(page)).toContain('fail');
    await expect.poll(() => page.locator('.sheet-stops').textContent()).toMatch(/STOP.*1250 mg\/kg/s);
  });

  it('take nitrate as a stop in bacon', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    await field(page, 'Nitrate in it, by the pack').fill('4');
    // 9 CFR 424.21(c): no nitrate in bacon.
    await expect
      .poll(() => page.locator('.finding[data-severity="stop"]').allTextContents())
      .toContainEqual(expect.stringMatching(/this curing salt holds nitrate/));
    await expect.poll(() => verdicts(page)).toContain('fail');
  });

  it('have no figure in a salt box', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    await page.getByLabel('Way of the cure').selectOption('salt-box');
    await expectAnswer(page, DOSE, /nobody knows how much goes in/);
    expect(await page.getByText(/120\.0 mg\/kg/).count()).toBe(0);
    await expect.poll(() => verdicts(page)).toContain('cannot-tell');
  });

  it('are told by the longest rule, with the days to turn them, and their loss', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    // Derived: salt to 90 % in the middle of 40 mm, D of 5 and 2 × 10⁻¹⁰ m²/s, 9.6 and 23.9 days; seven days an inch, 11.1.
    await expectAnswer(page, 'Days in the cure, as guidance', /^12 to 24 days$/);
    await field(page, 'Weight to lose in drying').fill('35');
    // Derived: 5000 g × 0.65.
    await expectAnswer(page, 'Weight at the loss wanted', /3250\sg/);
    await expect.poll(() => page.locator('.finding[data-severity="stop"]').count()).toBeGreaterThan(0);
    await field(page, 'Weight of the piece now').fill('4500');
    await expectAnswer(page, 'Lost so far', /10\.0 %/);
  });

  it('can be taken out and put back', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    await page.getByRole('button', { name: 'Remove: Belly' }).click();
    await expect.poll(() => answer(page, DOSE).count()).toBe(0);
    // The way back takes the focus where the row was.
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('BUTTON');
    await page.keyboard.press('Enter');
    await expectAnswer(page, DOSE, /^Weigh 9\.6\sg$/);
  });

  it('odd texts as a thickness are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    await expectOddTextsKept(page, field(page, 'Thickest place'), {
      answers: 'Days in the cure, as guidance',
    });
  });
});

describe('the rest of the batch', () => {
  it('shows the stop on the batch sheet', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await belly(page);
    await field(page, 'Curing salt, as weighed').fill('100');
    await saved(page);
    await page.goto('/worksheets/batch-sheet/');
    await expect.poll(() => page.locator('.sheet-stops').first().textContent()).toMatch(/1250 mg\/kg/);
    expect(visit.problems).toEqual([]);
  });

  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await belly(page);
    await page.locator('.verdict').first().waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)(
    '%s: a card for every bag, with every input and its flag',
    async (format) => {
      await using visit = await openPage(PATH);
      const { page } = visit;
      await belly(page);
      await page.getByRole('button', { name: 'Add a piece' }).click();
      await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
      const pages = await readPdf(await pdfOf(page, { format }));
      expect(pages).toHaveLength(2);
      await expectPrintable(page, pages, format);
      const text = pages[0]?.text ?? '';
      for (const wanted of [
        /Dry cure: Belly/,
        /Bacon: belly or side/,
        /5000\s?g\s?E/,
        /2\.5\s?%\s?D/,
        /6\.25\s?%\s?E/,
        /9\.6\s?g\s?W/,
        /120\.0 on the meat/,
        /PASS/,
        /12 to 24/,
        /11-03/,
        /United States, federal inspection/,
        /calc \d/,
        /it validates no process/,
      ]) {
        expect(text).toMatch(wanted);
      }
      expect(visit.problems).toEqual([]);
    },
  );

  it('is an empty form where no script runs', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const pages = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toMatch(/CURING SALT: weighed in grams, by two people/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import {
  awake,
  expectAnswer,
  expectNoBrokenNumber,
  expectOddTextsKept,
  field,
  ODD_TEXTS,
  ODD_TIMEOUT_MS,
  saved,
  tabTo,
} from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/brine/';
const DOSE = 'Curing salt for the nitrite wanted';

const verdicts = (page: Page) =>
  page.locator('.verdict').evaluateAll((all) => all.map((one) => one.getAttribute('data-state')));
const row = (page: Page, head: string) =>
  page.locator('table.figures tr', { has: page.getByRole('rowheader', { name: head, exact: true }) });

/** An invented mutton ham: 2.4 kg of leg in 1.2 kg of water, injected with 8 % and covered. */
async function muttonHam(page: Page): Promise<void> {
  await awake(page);
  await page.getByLabel('Whose rule on nitrite').selectOption('us-federal');
  await page.getByLabel('What it is').selectOption('ham');
  await page.getByLabel('How it is eaten').selectOption('cooked');
  await field(page, 'Smallest step of the scale').fill('0.1');
  await page.getByLabel('Way of the brine').selectOption('inject-cover');
  await field(page, 'All the meat, without skin').fill('2400');
  await field(page, 'Thickest place').fill('110');
  await field(page, 'Water of the brine').fill('1200');
  await field(page, 'Salt wanted').fill('2.4');
  await field(page, 'Sugar wanted').fill('1');
  await field(page, 'Nitrite wanted, as sodium nitrite').fill('120');
  await page.getByLabel('Accelerator', { exact: true }).selectOption('sodium-salt');
  await field(page, 'Accelerator wanted').fill('361');
  await field(page, 'Brine injected, of the meat').fill('8');
  await field(page, 'Sodium nitrite in it, by the pack').fill('6.25');
  await field(page, 'Nitrate in it, by the pack').fill('0');
  await page.getByLabel('Fresh or used').selectOption('fresh');
  await page.getByLabel('Meat into the brine on').fill('2026-11-02');
  await field(page, 'Time in the brine').fill('10');
  await expectAnswer(page, DOSE, /^Weigh 6\.9\sg$/);
}

describe('a brine from nothing', () => {
  it('by the keyboard alone at 320 px, dosed and kept over a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    const choose = async (label: string, downs: number) => {
      await tabTo(page, label);
      for (let press = 0; press < downs; press++) await page.keyboard.press('ArrowDown');
    };
    const write = async (label: string, text: string) => {
      await tabTo(page, label);
      await page.keyboard.press('Control+A');
      await page.keyboard.type(text);
    };
    await choose('Whose rule on nitrite', 1);
    await choose('What it is', 2);
    await write('Smallest step of the scale', '0.1');
    await choose('Way of the brine', 2);
    await write('All the meat, without skin', '2400');
    await write('Water of the brine', '1200');
    await write('Salt wanted', '2.4');
    await write('Nitrite wanted, as sodium nitrite', '120');
    await write('Sodium nitrite in it, by the pack', '6.25');
    await write('Nitrate in it, by the pack', '0');
    // Derived: 120 mg/kg × 3.6 kg ÷ 62.5 mg/g = 6.91 g; 2.4 % of 3.6 kg less its salt.
    await expectAnswer(page, DOSE, /^Weigh 6\.9\sg$/);
    await expectAnswer(page, 'Plain salt', /^Weigh 79\.9\sg$/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await expectNoBrokenNumber(page);
    await saved(page);
    await page.reload();
    await expectAnswer(page, DOSE, /^Weigh 6\.9\sg$/);
    expect(visit.problems).toEqual([]);
  });

  it('says what is missing, and passes nothing before that', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await muttonHam(page);
    // What is left of nitrite is judged on the finished weight, which nobody has written.
    await expect.poll(async () => new Set(await verdicts(page))).toEqual(new Set(['pass', 'cannot-tell']));
    await field(page, 'Sodium nitrite in it, by the pack').fill('');
    await expectAnswer(page, DOSE, /strength off the pack/);
    await field(page, 'Water of the brine').fill('');
    await expectAnswer(page, DOSE, /weigh the water/);
    await page.getByLabel('Way of the brine').selectOption('');
    await expectAnswer(page, DOSE, /choose the way of the brine/);
    await expect.poll(() => verdicts(page)).toEqual([]);
    await expectNoBrokenNumber(page);
  });
});

describe('the vat', () => {
  it('is told in every scale and mixed in order: phosphate first, curing salt late, accelerator last', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await muttonHam(page);
    // Derived: 86.4 g of salt in 1324 g of brine.
    await expect
      .poll(() => row(page, 'Salt in the brine, by weight').first().textContent())
      .toMatch(/6\.52 %/);
    await expect.poll(() => row(page, 'Degrees salometer').first().textContent()).toMatch(/24\.7/);
    // Common practice, no source.
    expect(
      await page
        .locator('.mixing > li')
        .evaluateAll((all) => all.map((one) => one.getAttribute('data-part'))),
    ).toEqual(['cold-water', 'phosphate', 'salt', 'sugar', 'strained-spice', 'curing-salt', 'accelerator']);
  });

  it('shows both federal countings and the worst case side by side, and warns how far they lie apart', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await muttonHam(page);
    await page.getByLabel('Way of the brine').selectOption('equilibrium');
    await field(page, 'Brine taken up by soaking, of the meat').fill('10');
    // Derived: 431 mg of nitrite in 1324 g of pickle, 10 % taken up; ÷ 3724 g; ÷ 2400 g.
    await expect.poll(() => row(page, 'By pick-up, federal method 1').textContent()).toMatch(/32\.6 mg\/kg/);
    await expect
      .poll(() => row(page, 'At equilibrium, federal method 2').textContent())
      .toMatch(/115\.8 mg\/kg/);
    await expect
      .poll(() => row(page, 'If the meat took up all of it').textContent())
      .toMatch(/179\.7 mg\/kg/);
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(expect.stringMatching(/Two federal countings.*never mix them/s));
    // 110 mm and not injected.
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(expect.stringMatching(/the core stays uncured/));
  });

  it('tells salt in the meat and on its water, and the weights to inject to', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await muttonHam(page);
    // Derived: 86.4 g shared over 1728 g of water in the meat and 1200 g outside.
    await expectAnswer(page, 'Salt in the meat, at the end', /2\.12 %/);
    await expectAnswer(page, 'Salt on its water', /2\.87 %/);
    await expectAnswer(page, 'Brine to inject into all the meat', /^192\sg$/);
    await expectAnswer(page, 'Inject until it all weighs', /^2592\sg$/);
  });

  it('used before, or with the curing salt weighed as salt, is a stop on screen, card and batch sheet', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await muttonHam(page);
    await page.getByLabel('Fresh or used').selectOption('used');
    await field(page, 'Curing salt, as weighed').fill('79.9');
    const stops = page.locator('.worksheet .finding[data-severity="stop"]');
    await expect
      .poll(() => stops.allTextContents())
      .toContainEqual(expect.stringMatching(/lain in this brine/));
    await expect.poll(() => verdicts(page)).toContain('fail');
    await expect.poll(() => page.locator('.sheet-stops').textContent()).toMatch(/lain in this brine/);
    await saved(page);
    await page.goto('/worksheets/batch-sheet/');
    await expect.poll(() => page.locator('.sheet-stops').first().textContent()).toMatch(/lain in this brine/);
    expect(visit.problems).toEqual([]);
  });

  it('odd texts as a strength are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await muttonHam(page);
    await expectOddTextsKept(page, field(page, 'Sodium nitrite in it, by the pack'), { answers: DOSE });
  });
});

describe('the converter of scales', () => {
  it('needs no batch, keeps its reading, and turns 40 degrees salometer into all the others', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await page.getByLabel('Measured in').selectOption('salometer');
    await field(page, 'Reading').fill('40');
    // The brine table: 40 degrees is 10.558 % salt, 118.0 g to a kilogram of water, 10.4 °Bé.
    await expect.poll(() => row(page, 'Salt in the brine, by weight').textContent()).toMatch(/10\.56 %/);
    expect(await row(page, 'Salt to a kilogram of water').textContent()).toMatch(/118\.0 g\/kg/);
    expect(await page.locator('.worksheet').getAttribute('data-life')).toBe('blank');
    await page.reload();
    await expect.poll(() => row(page, 'Salt in the brine, by weight').textContent()).toMatch(/10\.56 %/);
    await page.getByLabel('Measured in').selectOption('baume');
    await field(page, 'Reading').fill('24,5');
    // Saturated brine, 26.395 %.
    await expect.poll(() => row(page, 'Salt in the brine, by weight').textContent()).toMatch(/26\.\d+ %/);
    expect(visit.problems).toEqual([]);
  });

  it('odd texts as a reading give no brine', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    for (const odd of [...ODD_TEXTS, '120']) {
      await field(page, 'Reading').fill('40');
      await expect.poll(() => row(page, 'Salt in the brine, by weight').count(), { message: odd }).toBe(1);
      await field(page, 'Reading').fill(odd);
      await page.locator('.field-problem').first().waitFor();
      await expect.poll(() => row(page, 'Salt in the brine, by weight').count(), { message: odd }).toBe(0);
      await expectNoBrokenNumber(page);
    }
  });
});

describe('on a phone and on paper', () => {
  it('fits 320 px and breaks no accessibility rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await muttonHam(page);
    await page.locator('.verdict').first().waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it.each(['A4', 'Letter'] as const)('%s: a card with every input and its flag', async (format) => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await muttonHam(page);
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages.length).toBeLessThanOrEqual(2);
    await expectPrintable(page, pages, format);
    const text = pages.map((one) => one.text).join(' ');
    for (const wanted of [
      /Brine and injection/,
      /Inject, then cover with the rest/,
      /2400\s?g\s?E/,
      /72\s?%\s?D/,
      /6\.25\s?%\s?E/,
      /6\.9\s?g\s?W/,
      /79\.9\s?g\s?W/,
      /at equilibrium: 115\.8 mg\/kg/,
      /PASS/,
      /192\s?g\s?W/,
      /United States, federal inspection/,
      /it validates no process/,
    ]) {
      expect(text).toMatch(wanted);
    }
  });

  it('is an empty form where no script runs', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const pages = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
    const text = pages.map((one) => one.text).join(' ');
    expect(text).toMatch(/CURING SALT: weighed in grams, by two people/);
    expect(text).toMatch(/Map of the needles/);
  });
});

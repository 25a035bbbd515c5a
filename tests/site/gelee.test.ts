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

const PATH = '/worksheets/gelee/';
const DOSE = 'Gelatine to weigh';

/** An invented litre at 3.5 %, told for 200 bloom, with 250 bloom on the shelf. */
async function litre(page: Page): Promise<void> {
  await awake(page);
  await field(page, 'Liquid to set').fill('1000');
  await field(page, 'Strength').fill('3.5');
  await field(page, 'Bloom at hand').fill('250');
  // Derived: 35 g × √(200 ÷ 250).
  await expectAnswer(page, DOSE, /^31\.3\sg$/);
}

const findings = (page: Page) => page.locator('.finding').allTextContents();

describe('a jelly from nothing', () => {
  it('by the keyboard alone at 320 px, weighed and kept over a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Liquid to set');
    await page.keyboard.type('1000');
    await tabTo(page, 'Strength');
    await page.keyboard.type('3.5');
    await tabTo(page, 'Bloom at hand');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('250');
    await expectAnswer(page, DOSE, /^31\.3\sg$/);
    // Derived: 31.305 g × 5 and × 6; the water is common practice, no source.
    await expectAnswer(page, 'Cold water to soak it in', /^157\sg to 188\sg$/);
    await tabTo(page, 'Pineapple');
    await page.keyboard.press('Space');
    await expect.poll(() => findings(page)).toContainEqual(expect.stringMatching(/gelatine will not set/));
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, DOSE, /^31\.3\sg$/);
    expect(await page.getByLabel('Pineapple').isChecked()).toBe(true);
    expect(visit.problems).toEqual([]);
  });

  it('shows both rules and their difference, whichever is used', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await litre(page);
    const table = page.locator('.figures');
    // Derived: 35 g × 200 ÷ 250 = 28 g by the linear rule.
    for (const wanted of [/31\.3\sg/, /28\.0\sg/, /3\.30\sg/])
      expect(await table.textContent()).toMatch(wanted);
    await page.getByLabel('Rule between blooms').selectOption('linear');
    await expectAnswer(page, DOSE, /^28\.0\sg$/);
    expect(await table.textContent()).toMatch(/31\.3\sg/);
    await expect.poll(() => findings(page)).toContainEqual(expect.stringMatching(/apart/));
  });

  it('has no default answer: without a liquid nothing is weighed', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await litre(page);
    await field(page, 'Liquid to set').fill('');
    await expectAnswer(page, DOSE, /Cannot tell/);
    await expect
      .poll(() => page.getByText(/Still needed for the weight/).textContent())
      .toMatch(/the liquid/);
    await expectNoBrokenNumber(page);
  });
});

describe('what the liquid and the gelatine do', () => {
  it('acid asks for 10 to 25 % more, and an alcohol that cannot be read gives no weight', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await litre(page);
    await field(page, 'pH of the liquid').fill('3.5');
    // Derived: 31.305 g × 1.1 and × 1.25; the raise is common practice, no source.
    await expectAnswer(page, DOSE, /^34\.4\sg to 39\.1\sg$/);
    await field(page, 'Alcohol, by volume of the liquid').fill('some');
    await expectAnswer(page, DOSE, /Cannot tell/);
  });

  it('sheets are weighed by their grade', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await field(page, 'Liquid to set').fill('1000');
    await field(page, 'Strength').fill('3.5');
    await page.getByLabel('Form', { exact: true }).selectOption('sheet');
    await page.getByLabel('Grade', { exact: true }).selectOption('silver');
    // Derived: silver is 160 bloom and 2.5 g a sheet; 35 g × √(200 ÷ 160) = 39.1 g, 15.7 sheets.
    await expectAnswer(page, DOSE, /^39\.1\sg$/);
    await expectAnswer(page, 'In sheets', /^15\.7 sheets$/);
    expect(await findings(page)).toContainEqual(expect.stringMatching(/do not count them across grades/));
  });

  it('agar goes by its own strength and takes no rule between blooms', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await litre(page);
    await page.getByLabel('Set with').selectOption('agar');
    await field(page, 'Strength').fill('');
    // Common practice, no source: 0.6 to 1.0 %, middle 0.8 %.
    await expectAnswer(page, 'Agar to weigh', /^8\.00\sg$/);
    expect(await answer(page, DOSE).count()).toBe(0);
    expect(await field(page, 'Bloom at hand').count()).toBe(0);
  });

  it('jelly for a pie is told by the room inside, with the heat and the hygiene of it', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await field(page, 'Room inside the crusts').fill('1620');
    // Common practice, no source: 60 to 120 mL a litre.
    await expectAnswer(page, 'Jelly under the crust', /^97\smL to 194\smL$/);
    await field(page, 'Jelly when poured').fill('60');
    await field(page, 'Core when poured').fill('55');
    await expect.poll(() => findings(page)).toContainEqual(expect.stringMatching(/core is at 55/));
    const said = (await findings(page)).join(' ');
    for (const wanted of [/60 °C \(140 °F\) melts/, /core is at 55 °C/, /nothing will kill what it brings/])
      expect(said).toMatch(wanted);
  });

  it('odd texts as the liquid are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await litre(page);
    await expectOddTextsKept(page, field(page, 'Liquid to set'), { answers: DOSE });
  });

  it('breaks no accessibility rule and fits a phone', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await litre(page);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)('%s: one card with every input and its flag', async (format) => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await litre(page);
    await page.getByLabel('Kiwi').check();
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages).toHaveLength(1);
    await expectPrintable(page, pages, format);
    const text = pages[0]?.text ?? '';
    for (const wanted of [
      /1000 ?mL ?E/,
      /3\.5 ?% ?E/,
      /250 ?E/,
      /200 ?D/,
      /31\.3 ?g ?W/,
      /28\.0 ?g ?W/,
      /Kiwi/,
      /gelatine will not set/,
      /Plate test/,
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
    expect(pages[0]?.text).toMatch(/By the square root/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

import { cookPlanContext } from '@larderwright/calc/batch';
import { newCookPlanSlice, planGround, solvePlan } from '@larderwright/calc/cook-plan';
import { loadIngredients } from '@larderwright/calc/ingredients';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demos } from '../../content/demo/index.ts';
import { timeWords } from '../../worksheets/cook-plan/text.ts';
import { accessibilityFaults } from './accessibility.ts';
import { answer, awake, expectNoBrokenNumber, field, saved, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/cook-plan/';
const DEMO = `${PATH}#demo=country-terrine`;
const REACHES = /^Core reaches/;

const reached = (page: Page) => page.locator('.answer').filter({ hasText: REACHES }).locator('.answer-value');

/** The plan of the demo with every default, worked out here: what the worker must answer. */
async function expectedMinutes(): Promise<string> {
  const batch = demos['country-terrine'];
  if (batch === undefined) throw new Error('no such demo');
  const context = cookPlanContext(batch, await loadIngredients());
  const { problem } = planGround(newCookPlanSlice(), context);
  const minutes = problem && solvePlan(problem)?.prediction.targetMin;
  if (minutes == null) throw new Error('the demo has no plan');
  return timeWords(minutes);
}

describe('the cook plan', () => {
  it('predicts the demo in its worker as calc does in Node, marks it stale at a change, and predicts anew', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await awake(page);
    const workers = () => page.workers().length;
    await expect.poll(() => reached(page).textContent(), { timeout: 20_000 }).toBe(await expectedMinutes());
    expect(workers()).toBe(1);
    await expect
      .poll(() => page.locator('.curve-figure').first().textContent())
      .toMatch(/Coldest spot, predicted/);
    const before = await reached(page).textContent();
    await field(page, 'Oven at').fill('90');
    await expect.poll(() => page.getByText(/^STALE: what stands below/).count()).toBe(1);
    await expect.poll(() => page.getByText(/^STALE/).count(), { timeout: 20_000 }).toBe(0);
    expect(await reached(page).textContent()).not.toBe(before);
    await field(page, 'Oven at').fill('hot');
    await expect
      .poll(() => page.locator('main').textContent())
      .toMatch(/Still needed for the curve: the oven/);
    await expectNoBrokenNumber(page);
    expect(visit.problems).toEqual([]);
  });

  it('by the keyboard alone at 320 px: a slider tries another depth, the cut is looked at through time', async () => {
    await using visit = await openPage(DEMO, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await expect.poll(() => reached(page).count(), { timeout: 20_000 }).toBe(1);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await tabTo(page, 'Cut');
    await page.keyboard.press('Enter');
    await tabTo(page, 'Look at the moment');
    await page.keyboard.press('Home');
    await expect
      .poll(() => page.locator('.section-figure figcaption').first().textContent())
      .toMatch(/at 0:00, as it goes in: coldest 4 °C, hottest 4 °C/);
    await page.keyboard.press('ArrowRight');
    await expect
      .poll(() => page.locator('.section-figure figcaption').first().textContent())
      .toMatch(/at 0:05, in the heat/);
    await tabTo(page, 'Depth of the mould');
    for (let press = 0; press < 4; press++) await page.keyboard.press('ArrowRight');
    await expect
      .poll(() => page.locator('#what-if').locator('..').textContent(), { timeout: 20_000 })
      .toMatch(/Tried: depth of the mould \d+ mm .*Target after .*; planned/);
    await expect.poll(() => page.getByText('Rough while it moves.').count(), { timeout: 20_000 }).toBe(0);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(visit.problems).toEqual([]);
  });

  it('stops the band when told, lays depths side by side with their cooling, and takes one into the mould', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await awake(page);
    await page.getByRole('button', { name: 'Stop drawing the band' }).click({ timeout: 20_000 });
    await page.getByRole('button', { name: 'Draw the band' }).waitFor();
    await page.getByRole('button', { name: 'Lay other depths side by side' }).click({ timeout: 20_000 });
    const rows = page.getByRole('table', { name: /^Depth against time/ }).locator('tbody tr');
    await expect.poll(() => rows.count(), { timeout: 30_000 }).toBe(8);
    const texts = await rows.allTextContents();
    expect(texts.every((text) => /within, as predicted|NOT IN TIME|cannot tell/.test(text))).toBe(true);
    await page.getByRole('button', { name: 'Use 50 mm' }).click();
    await expect.poll(() => page.getByText(/^STALE/).count()).toBeGreaterThan(0);
    await saved(page);
    expect(visit.problems).toEqual([]);
  });

  it('prints every input, the curve and the cuts on one page of either paper, in black and called no proof', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await awake(page);
    await expect.poll(() => page.locator('.card .section-picture').count(), { timeout: 20_000 }).toBe(2);
    const letter = await readPdf(await pdfOf(page, { format: 'Letter' }));
    expect(letter).toHaveLength(1);
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    await expectPrintable(page, pages, 'A4');
    expect(pages).toHaveLength(1);
    const text = pages.map((sheet) => sheet.text).join(' ');
    expect(text).toMatch(/No measured core curve of a terrine in a water bath is published/);
    expect(await answer(page, 'Probe here: the coldest spot as the heat ends').textContent()).toMatch(
      /^\d+ mm/,
    );
    await page.getByText('What the mix is counted as').click();
    await page.getByText(/Counted with the melting of its fat \(25 % of the mix\)/).waitFor();
    expect(text).toMatch(/PREDICTED, NOT PROOF: ±20 % at best/);
    expect(text).toMatch(/150 °C ?D/);
    expect(text).toMatch(/Cut across the middle/);
    expect(await answer(page, 'Carry-over').count()).toBe(1);
  });

  it('learns the oven from the readings of the cook log, and offers it to the next plan', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await awake(page);
    await field(page, 'Oven at').fill('160');
    await saved(page);
    const keep = page.getByRole('button', { name: 'Keep these times for the batch sheet' });
    await expect.poll(() => keep.isEnabled(), { timeout: 40_000 }).toBe(true);
    await keep.click();
    await page.getByText(/^Kept for the sheet: as told/).waitFor();
    await saved(page);
    await page.goto('/worksheets/batch-sheet/');
    await page.locator('.verdict').first().waitFor();
    const sheets = await readPdf(await pdfOf(page, { format: 'A4' }));
    expect(sheets.map((sheet) => sheet.text).join(' ')).toMatch(/As planned, no proof: core at 71 °C/);
    await page.goto('/worksheets/cook-log/');
    await awake(page);
    await expect
      .poll(() => page.locator('section[aria-labelledby="forecast"]').textContent(), { timeout: 30_000 })
      .toMatch(/Learnt from \d+ readings .*Carry-over, as forecast.*Band of the peak/);
    await expectNoBrokenNumber(page);
    await page.getByRole('textbox', { name: 'Name of the oven record' }).fill('Deck oven, long pan');
    await page.getByRole('button', { name: 'Keep it for the next plan' }).click();
    await page.getByText('Kept as Deck oven, long pan.').waitFor();
    await page.goto(PATH);
    await awake(page);
    await page.getByText('Oven record: what an earlier cook taught').click();
    await page.getByRole('combobox', { name: 'Oven record' }).selectOption('Deck oven, long pan');
    const heats = Number(await field(page, 'The oven heats the pan, times').inputValue());
    expect(heats).toBeGreaterThan(0.1);
    expect(heats).not.toBe(1);
    await expect.poll(() => reached(page).count(), { timeout: 20_000 }).toBe(1);
    expect(visit.problems).toEqual([]);
  });

  it('without a script is a form to write on', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const text = (await visit.page.locator('main').textContent()) ?? '';
    expect(text).toMatch(/Into the heat/);
    expect(text).toMatch(/The curve: not yet computed/);
  });
});

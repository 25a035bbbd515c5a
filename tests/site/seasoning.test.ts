import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { awake, expectAnswer, expectOddTextsKept, field, ODD_TIMEOUT_MS, saved, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/seasoning/';
const DEMO = `${PATH}#demo=country-terrine`;

/** A blend of four kilograms begun from the pepper-led style, by pointer. */
async function fourSpice(page: Page): Promise<void> {
  await field(page, 'Total mix').fill('4');
  await page.getByRole('button', { name: 'Add a blend' }).click();
  await page.getByLabel('Begin from a style').selectOption('four-spice-pepper');
  await page.getByRole('button', { name: 'Put in these parts' }).click();
  await field(page, 'Parts of Clove').waitFor();
}

const findings = (page: Page) => page.locator('.finding').allTextContents();

describe('a blend from nothing', () => {
  it('by the keyboard alone at 320 px, and it is there after a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Total mix');
    await page.keyboard.type('4');
    await tabTo(page, 'Add a seasoning');
    await page.keyboard.press('Enter');
    await field(page, 'Name of this spice').waitFor();
    await page.keyboard.press('Shift+Tab');
    await field(page, 'Name of this spice').focus();
    await page.keyboard.type('Wild thyme');
    await field(page, 'Dose of Wild thyme').focus();
    await page.keyboard.type('1,5');
    // Derived: 1.5 g/kg of 4 kg.
    await expectAnswer(page, 'All seasoning', /6\.00\sg/);
    await expect
      .poll(() => page.getByRole('listitem', { name: 'Wild thyme' }).textContent())
      .toMatch(/Weigh6\sg/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await field(page, 'Dose of Wild thyme').waitFor();
    expect(await field(page, 'Dose of Wild thyme').inputValue()).toBe('1,5');
    expect(visit.problems).toEqual([]);
  });

  it('begun from a style gives grams by parts', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await fourSpice(page);
    // Derived: parts 14, 3, 2, 1 of 20 at 3 g/kg in 4 kg: 8.4, 1.8, 1.2 and 0.6 g.
    await expectAnswer(page, 'Of this blend into the batch', /12\.0\sg/);
    await expect
      .poll(() => page.getByRole('listitem', { name: 'Clove' }).textContent())
      .toMatch(/Share5\.0\s%.*0\.15\sg\/kg.*0\.6\sg/);
  });
});

describe('what is too much or too little', () => {
  it('counts blend and loose together against the ceiling', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await fourSpice(page);
    await page.getByRole('button', { name: 'Add a seasoning' }).click();
    const loose = page.getByRole('listitem', { name: 'Spice 1' });
    await loose.getByLabel('Spice', { exact: true }).selectOption('clove');
    await field(page, 'Dose of Clove').fill('0.25');
    // Clove, ceiling 0.35 g/kg (common practice, no source): 0.15 of the blend and 0.25 loose.
    await expect
      .poll(() => findings(page))
      .toContainEqual(expect.stringMatching(/Clove: 114 % of its ceiling/));
  });

  it('carries in salt what the scale cannot show, and tells the salt to leave out', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await fourSpice(page);
    await field(page, 'Total mix').fill('1');
    // Derived: 0.15 g of clove is less than five steps of 0.1 g; 1.5 g of its mixture hold 1.35 g of salt.
    await expectAnswer(page, 'Plain salt to leave out, for the dilutions', /[0-9]\.[0-9]+\sg/);
    await expect
      .poll(() => findings(page))
      .toContainEqual(
        expect.stringMatching(/Clove: rub 0\.50 g into 4\.5 g of salt; 1\.5 g of that goes in/),
      );
    // Derived: the least, 0.15 g, wants 0.5 g: four batches.
    await expectAnswer(page, 'Batches to mix for, so that this scale shows every spice', /^4$/);
  });

  it('names the allergens of mustard', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await field(page, 'Total mix').fill('1');
    await page.getByRole('button', { name: 'Add a seasoning' }).click();
    await page.getByLabel('Spice', { exact: true }).selectOption('mustard');
    await field(page, 'Dose of Mustard seed').fill('4');
    // Mustard: Regulation (EU) No 1169/2011, annex II.
    await expect
      .poll(() => findings(page))
      .toContainEqual(expect.stringMatching(/carries allergens: mustard/));
  });
});

describe('into the formula', () => {
  it('writes the grams once, and gives the old lines back', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.getByRole('button', { name: 'Add a blend' }).click();
    await page.getByLabel('Begin from a style').selectOption('pale');
    await page.getByRole('button', { name: 'Put in these parts' }).click();
    const write = page.getByRole('button', { name: 'Write these grams into the formula' });
    await write.click();
    const undo = page.getByRole('button', { name: 'Put the old lines back' });
    await undo.waitFor();
    expect(await undo.evaluate((button) => button === document.activeElement)).toBe(true);
    // The doses count on the finished mix, so that what is written changes nothing.
    await expect.poll(() => write.count()).toBe(0);
    await saved(page);
    await page.goto('/worksheets/batch-formula/');
    const names = () =>
      page
        .getByRole('combobox', { name: 'Ingredient' })
        .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
    await expect.poll(names).toContain('Cardamom');
    expect((await names()).filter((name) => name === 'Mace')).toHaveLength(1);
    await page.goto(PATH);
    await field(page, 'Parts of Cardamom').waitFor();
    expect(await write.count()).toBe(0);
    expect(visit.problems).toEqual([]);
  });
});

describe('on screen and paper', () => {
  it('odd texts as parts are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await fourSpice(page);
    await expectOddTextsKept(page, field(page, 'Parts of Nutmeg'), {
      answers: 'Of this blend into the batch',
      quoted: true,
    });
  });

  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await awake(page);
    await fourSpice(page);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  it('prints the label of the jar with every spice, its parts and the dose', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await fourSpice(page);
    await expect.poll(() => page.locator('.card').textContent()).toMatch(/Clove/);
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    await expectPrintable(page, pages, 'A4');
    const text = pages.map((sheet) => sheet.text).join(' ');
    // Derived: 14 of 20 parts, 3 g/kg of 4 kg.
    expect(text).toMatch(/White pepper ground, powder 14 ?D 70\.0 % 2\.10 ?W 8\.4 g/);
    expect(text).toMatch(/3 g\/kg/);
    // Derived: 12 g of the blend in all.
    expect(text).toMatch(/12 g/);
  });
});

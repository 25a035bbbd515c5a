import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { awake, expectAnswer, expectOddTextsKept, field, ODD_TIMEOUT_MS, saved, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';

const PATH = '/worksheets/mould-and-fill/';
const DEMO = `${PATH}#demo=country-terrine`;

describe('a mould from nothing', () => {
  it('by the keyboard alone at 320 px, measured with a rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Add the mould');
    await page.keyboard.press('Enter');
    await field(page, 'Length, inside').waitFor();
    for (const [label, mm] of [
      ['Length, inside', '290'],
      ['Width, inside', '95'],
      ['Depth, inside', '75'],
    ] as const) {
      await page.keyboard.press('Shift+Tab');
      await field(page, label).focus();
      await page.keyboard.type(mm);
    }
    // Derived: 29.0 × 9.5 × 6.5 cm, 1790.8 mL, × 1.04 g/mL.
    await expectAnswer(page, 'Fill each mould with', /1862\sg/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Fill each mould with', /1862\sg/);
    expect(visit.problems).toEqual([]);
  });

  it('begun from a usual size marks every measure as a default', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await page.getByLabel('Add a mould').selectOption({ label: 'Terrine, 2 L class (290 × 95 × 75 mm)' });
    await page.getByRole('button', { name: 'Add the mould' }).click();
    await expectAnswer(page, 'Fill each mould with', /1862\sg/);
    expect(await page.locator('.mould .field-label', { hasText: /inside default/ }).count()).toBe(3);
  });

  it('is drawn from its own measures', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    const drawing = page.locator('.drawing svg');
    await expect
      .poll(() => drawing.getAttribute('aria-label'))
      .toMatch(/length 290 mm, width 95 mm, depth 75 mm; filled to 65\.0 mm/);
    await field(page, 'Depth, inside').fill('');
    await expect
      .poll(() => drawing.getAttribute('aria-label'))
      .toMatch(/depth not known; fill level not known/);
  });
});

describe('the batch in its moulds', () => {
  it('takes the weight from the formula and tells what is left over', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await expectAnswer(page, 'Weight of the batch, by the formula', /3850\sg/);
    // Derived: two moulds of 1862.4 g, 3850.1 − 3724.8 g.
    await expectAnswer(page, 'All moulds take', /3725\sg/);
    await expectAnswer(page, 'Left over', /125\sg/);
    expect(visit.problems).toEqual([]);
  });

  it('is cautioned when the fill is deeper than 75 mm, at the field', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await field(page, 'Depth, inside').waitFor();
    await field(page, 'Depth, inside').fill('110');
    // Deeper than 75 mm chills slowly: common practice, no source.
    await expect
      .poll(() => page.locator('.mould .finding').allTextContents())
      .toContainEqual(expect.stringMatching(/Caution.*100 mm deep/s));
  });

  it('believes the water when it differs from the rule, and says so', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await field(page, 'Filled with water to the rim').waitFor();
    await field(page, 'Filled with water to the rim').fill('1800');
    await expect
      .poll(() => page.locator('.mould .finding').allTextContents())
      .toContainEqual(expect.stringMatching(/water and measures/));
    // Derived: 1862.4 g × 1800 ÷ 2066.25.
    await expectAnswer(page, 'Fill each mould with', /1622\sg/);
  });

  it('keeps what each mould weighed', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await field(page, 'Number 2').waitFor();
    await field(page, 'Number 2').fill('1855');
    await expectAnswer(page, 'Filled so far, as weighed', /3715\sg/);
    await saved(page);
    await page.reload();
    await field(page, 'Number 2').waitFor();
    expect(await field(page, 'Number 2').inputValue()).toBe('1855');
  });

  it('odd texts as a measure are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await expectOddTextsKept(page, field(page, 'Width, inside'), { answers: 'Fill each mould with' });
  });

  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(DEMO, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await field(page, 'Number 2').waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

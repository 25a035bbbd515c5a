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

const PATH = '/worksheets/salt-and-cure/';
const FORMULA = '/worksheets/batch-formula/';
const DEMO = `${PATH}#demo=country-terrine`;

const verdicts = (page: Page) =>
  page.locator('.verdict').evaluateAll((all) => all.map((one) => one.getAttribute('data-state')));
const rule = (page: Page) => page.getByLabel('Whose rule on nitrite');
const row = (page: Page, head: string) =>
  page.locator('table.figures tr', { has: page.getByRole('rowheader', { name: head, exact: true }) }).last();

describe('the figures of the demo', () => {
  it('are shown on both weights and in both forms', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    // Derived: 5.4 g × 62.5 mg/g ÷ 2.800 kg and ÷ 3.8501 kg; as ion × 0.6668.
    await expect.poll(() => row(page, 'Meat block').textContent()).toMatch(/120\.5 mg\/kg/);
    await expect
      .poll(() => row(page, 'Everything in the bowl').textContent())
      .toMatch(/87\.7 mg\/kg.*58\.5 mg\/kg/s);
    expect(visit.problems).toEqual([]);
  });

  it('fit a phone and break no accessibility rule', async () => {
    await using visit = await openPage(DEMO, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('without a rule set', () => {
  it('every limit is CANNOT TELL and no dose is given', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await rule(page).selectOption('');
    await expect.poll(async () => new Set(await verdicts(page))).toEqual(new Set(['cannot-tell']));
    await expectAnswer(page, 'Curing salt for the nitrite wanted', /choose whose rule/);
  });
});

describe('the dose', () => {
  it('is worked out in grams and written into the formula by a button', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await rule(page).selectOption('us-federal');
    await field(page, 'In the formula').fill('');
    await field(page, 'As weighed').fill('');
    await field(page, 'Nitrite wanted, as sodium nitrite').fill('120');
    // FSIS Directive 7620.3 (1995), comminuted products: 120 mg/kg × 2.800 kg ÷ 62.5 mg/g = 5.376 g.
    await expectAnswer(page, 'Curing salt for the nitrite wanted', /^Weigh 5\.4 g$/);
    await page.getByRole('button', { name: 'Write this weight into the formula' }).click();
    await expect.poll(() => field(page, 'In the formula').inputValue()).toBe('5.4');
    await saved(page);
    await page.goto(FORMULA);
    const cure = page.locator('.mix-line', { has: page.locator('.cure-strength') });
    await cure.waitFor();
    expect(await field(cure, 'Amount').inputValue()).toBe('5.4');
  });

  it('is refused where the scale is too coarse', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await field(page, 'Smallest step of the scale').fill('1');
    // Fewer than 50 steps of the scale: common practice, no source.
    await expectAnswer(page, 'Curing salt for the nitrite wanted', /Refused: too little for this scale/);
    expect(await page.getByRole('button', { name: 'Write this weight into the formula' }).count()).toBe(0);
  });

  it('has no strength until the pack is read', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await field(page, 'Sodium nitrite in it, by the pack').fill('');
    await expectAnswer(page, 'Curing salt for the nitrite wanted', /strength off the pack/);
    await expect.poll(() => verdicts(page)).toContain('cannot-tell');
    expect(await verdicts(page)).not.toContain('fail');
  });
});

describe('a limit on what is left', () => {
  it('is told by a laboratory alone, in the form it counts, and stops the batch above it', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await rule(page).selectOption('european-union-2025');
    await expect.poll(() => verdicts(page)).toContain('cannot-tell');
    await page.getByRole('button', { name: 'Write down a laboratory’s figure of nitrite left' }).click();
    await field(page, 'Found in the product').fill('45');
    const said = () => page.locator('main').textContent();
    await expect.poll(said).toMatch(/The laboratory’s figure cannot be read yet/);
    await page.getByLabel('What the figure counts').selectOption('nitrite-ion');
    // Regulation (EU) 2023/2108: 45 mg/kg left, as nitrite ion.
    await expect.poll(said).toMatch(/Within the limit by a laboratory: 45\.0 mg\/kg as nitrite ion/);
    await field(page, 'Found in the product').fill('45.1');
    await expect.poll(said).toMatch(/Stop: a laboratory found 45\.1 mg\/kg as nitrite ion/);
    await saved(page);
    await page.reload();
    await page.locator('.verdict').first().waitFor();
    expect(await field(page, 'Found in the product').inputValue()).toBe('45.1');
    expect(visit.problems).toEqual([]);
  });
});

describe('plain salt', () => {
  it('is refused, with the one who over-supplies, when the ingredients bring too much', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await field(page, 'Salt wanted, of everything in the bowl').fill('0.2');
    await expectAnswer(page, 'Plain salt in all', /None, and none can help.*bacon/s);
  });

  it('reckons every source', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    // Derived from the kitchen's working values and the pack: 63.1 g of salt in 3850 g.
    await expect.poll(() => row(page, 'All sources').textContent()).toMatch(/1\.64 %.*63\.1 g/s);
  });
});

describe('from nothing', () => {
  it('by the keyboard alone at 320 px: rule, scale, a curing salt and its strength', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Whose rule on nitrite');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'Smallest step of the scale');
    await page.keyboard.type('0.1');
    await tabTo(page, 'Add a curing salt to the formula');
    await page.keyboard.press('Enter');
    await field(page, 'Sodium nitrite in it, by the pack').waitFor();
    await tabTo(page, 'Sodium nitrite in it, by the pack');
    await page.keyboard.type('6.25');
    await tabTo(page, 'In the formula');
    await page.keyboard.type('5');
    await expectNoBrokenNumber(page);
    expect(await verdicts(page)).not.toContain('pass');
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(visit.problems).toEqual([]);
  });

  it('odd texts as a strength are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await expectOddTextsKept(page, field(page, 'Sodium nitrite in it, by the pack'), {
      answers: 'Curing salt for the nitrite wanted',
    });
  });
});

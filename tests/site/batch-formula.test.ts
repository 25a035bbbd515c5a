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
  paste,
  saved,
  tabTo,
} from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';

const PATH = '/worksheets/batch-formula/';
const DEMO = `${PATH}#demo=country-terrine`;

/** Adds a line with the keyboard: a word of its name, the first suggestion taken, the amount. */
async function typeLine(page: Page, words: string, amount: string): Promise<void> {
  await tabTo(page, 'Add an ingredient', 400);
  await page.keyboard.press('Enter');
  await page.locator('[role=combobox]:focus').waitFor();
  await page.keyboard.type(words);
  await page.locator('[role=option]').first().waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await tabTo(page, 'Amount');
  await page.keyboard.type(amount);
}

const line = (page: Page, place: number) => page.locator('.mix-line').nth(place);
const names = (page: Page) =>
  page
    .locator('.mix-line [role=combobox]')
    .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));

describe('a formula typed from nothing', () => {
  it('by the keyboard alone at 320 px, and found again after a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Product');
    await page.keyboard.type('Pork terrine, trial 1');
    await typeLine(page, 'pork shoulder 80', '1000');
    await typeLine(page, 'back fat', '0,5 kg');
    await expectAnswer(page, 'Everything in the bowl', /1500\sg/);
    // Derived from the kitchen's working values: (0.20 × 1000 + 0.88 × 500) ÷ 1500.
    await expectAnswer(page, 'Fat', /^42\.7 %/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Pork terrine, trial 1');
    await expectAnswer(page, 'Everything in the bowl', /1500\sg/);
    expect(await field(line(page, 1), 'Amount').inputValue()).toBe('0,5 kg');
    expect(visit.problems).toEqual([]);
  });

  it('takes a name of its own, and then cannot tell what it holds', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await page.getByRole('button', { name: 'Add an ingredient' }).click();
    await page.locator('[role=combobox]:focus').waitFor();
    await page.keyboard.type('Aunt’s paste');
    await tabTo(page, 'Amount');
    await page.keyboard.type('250');
    await expectAnswer(page, 'Fat', /Cannot tell/);
    await expect
      .poll(() => page.locator('main').textContent())
      .toMatch(/Composition cannot be told: Aunt’s paste/);
  });

  it('loses the figures of an ingredient when another name is written over it', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await typeLine(page, 'pork liver', '300');
    await expectAnswer(page, 'Fat', /%$/);
    await line(page, 0).getByRole('combobox', { name: 'Ingredient' }).fill('Chicken liver from the market');
    await expectAnswer(page, 'Fat', /Cannot tell/);
  });

  it('is still written when the ingredient list cannot be fetched', async () => {
    await using visit = await openPage(PATH);
    const { page, context } = visit;
    await awake(page);
    await page.getByRole('button', { name: 'Add an ingredient' }).click();
    await page.locator('[role=combobox]:focus').waitFor();
    await context.setOffline(true);
    await page.getByRole('button', { name: 'Add an ingredient' }).focus();
    await page.locator('[role=combobox]').focus();
    await page.keyboard.type('Hare');
    expect(await page.locator('[role=combobox]').inputValue()).toBe('Hare');
  });
});

describe('odd texts in an amount', () => {
  it('odd texts are kept letter for letter, answered at their field, and never turn into a broken number', {
    timeout: ODD_TIMEOUT_MS,
  }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await page.getByRole('button', { name: 'Add an ingredient' }).click();
    const amount = field(line(page, 0), 'Amount');
    await amount.fill('1000');
    await expectOddTextsKept(page, amount, {
      answers: (holds) =>
        expect
          .poll(() => line(page, 0).locator('.field-problem, .field-read-back').count())
          .toEqual(holds ? 0 : expect.toSatisfy((told: number) => told > 0)),
    });
    expect(visit.problems).toEqual([]);
  });

  it('ten million characters leave the page alive, say what was cut, and leave the record readable', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await field(page, 'Product').fill('Before the paste');
    await page.getByRole('button', { name: 'Add an ingredient' }).click();
    await paste(field(line(page, 0), 'Amount'), '7'.repeat(10_000_000));
    await expect.poll(() => line(page, 0).textContent()).toMatch(/Only the first 2000 characters were kept/);
    await saved(page);
    await page.reload();
    await awake(page);
    expect(await field(page, 'Product').inputValue()).toBe('Before the paste');
    expect((await field(line(page, 0), 'Amount').inputValue()).length).toBe(2000);
  });
});

describe('the lines', () => {
  it('move with the keyboard, the focus going along', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await line(page, 2).waitFor();
    const [first, second, third] = await names(page);
    await page.getByRole('button', { name: `Move down: ${first}` }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await names(page)).slice(0, 3)).toEqual([second, first, third]);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await names(page)).slice(0, 3)).toEqual([second, third, first]);
  });

  it('can be taken out and put back where they stood', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await line(page, 2).waitFor();
    const before = await names(page);
    await page.getByRole('button', { name: `Remove: ${before[1]}` }).click();
    await expect.poll(async () => (await names(page)).length).toBe(before.length - 1);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe(`Put it back: ${before[1]}`);
    await page.keyboard.press('Enter');
    await expect.poll(() => names(page)).toEqual(before);
    expect(visit.problems).toEqual([]);
  });

  it('take what the scale showed and the lot, and then count by it', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await line(page, 2).waitFor();
    await page.getByLabel('as weighed, with lots').check();
    await field(line(page, 0), 'As weighed').fill('1010');
    await field(line(page, 0), 'Lot').fill('V-119');
    await expect.poll(() => line(page, 0).textContent()).toMatch(/10\.0\sg more/);
    await expectAnswer(page, 'Everything in the bowl', /3860\sg/);
  });
});

describe('a curing salt', () => {
  it('is weighed in grams only, whatever else is typed', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await page.getByRole('button', { name: 'Add a curing salt' }).click();
    const row = line(page, 0);
    await field(row, 'Amount').fill('0.2 oz');
    await expect.poll(() => row.textContent()).toMatch(/grams only/);
    await field(row, 'Amount').fill('1 tsp');
    await expect.poll(() => row.textContent()).toMatch(/Spoons and cups/);
    expect(await row.getByLabel('Amount counted in').count()).toBe(0);
    expect(await field(row, 'Sodium nitrite in it, by the pack').inputValue()).toBe('');
  });
});

describe('another size', () => {
  it('is shown before it is written, and can be taken back', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await line(page, 2).waitFor();
    const amount = field(line(page, 0), 'Amount');
    const before = await amount.inputValue();
    await field(page, 'Factor').fill('2');
    await expect.poll(() => page.locator('main').textContent()).toMatch(/Before and after, × 2/);
    expect(await amount.inputValue()).toBe(before);
    await page.getByRole('button', { name: 'Write these weights into the formula' }).click();
    await expect.poll(() => amount.inputValue()).toBe('2000');
    await expectAnswer(page, 'Everything in the bowl', /7700\sg/);
    await page.getByRole('button', { name: 'Put the old weights back' }).click();
    await expect.poll(() => amount.inputValue()).toBe(before);
  });
});

describe('a filled formula', () => {
  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(DEMO, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await line(page, 2).waitFor();
    await expectAnswer(page, 'Everything in the bowl', /3850\sg/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectNoBrokenNumber(page);
    expect(visit.problems).toEqual([]);
  });

  it('is a blank form to write on where no script runs', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const { page } = visit;
    expect(await page.getByRole('heading', { name: 'What goes in' }).count()).toBe(1);
    expect(await page.locator('.blank-form').isVisible()).toBe(true);
  });
});

describe('a lining', () => {
  it('is told in the slice, beside a bowl that it leaves as it was', async () => {
    await using visit = await openPage(DEMO, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await expectAnswer(page, 'Everything in the bowl', /3850\sg/);
    const place = (await names(page)).findIndex((name) => /bacon/i.test(name));
    await line(page, place).getByLabel('Part', { exact: true }).selectOption('lining');
    // Derived: 180 g of bacon at 3 % leave the bowl of 3,850.1 g and stand round it with their 5.4 g of salt.
    await expectAnswer(page, 'Everything in the bowl', /3670\sg/);
    await expectAnswer(page, 'Mix and lining', /3850\sg/);
    await expectAnswer(page, 'Salt as sliced', /^1\.6\d %/);
    await expect.poll(() => page.locator('main').textContent()).toMatch(/The lining brings 5\.4 g of salt/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(visit.problems).toEqual([]);
  });
});

describe('a batch begun from its family', () => {
  it('has lines with usual shares as defaults, by the keyboard at 320 px, and no curing salt', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await page.getByLabel('Family', { exact: true }).selectOption({ label: 'Country terrine' });
    await tabTo(page, 'Begin with its usual shares');
    await page.keyboard.press('Enter');
    await expectAnswer(page, 'Everything in the bowl', /^(2[._]?99\d|300\d)\sg/);
    // Shares inside the ranges of the family: common practice, no source.
    expect(await page.locator('.mix-line').count()).toBe(9);
    expect(await page.locator('.mix-amount .field-default').count()).toBe(9);
    expect(await page.locator('.cure-strength').count()).toBe(0);
    expect(await field(page, 'Salt wanted, of everything in the bowl').inputValue()).toBe('1.7');
    expect(await page.getByText('Begin with its usual shares').count()).toBe(0);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Everything in the bowl', /^(2[._]?99\d|300\d)\sg/);
    expect(visit.problems).toEqual([]);
  });

  it('keeps the salt that somebody typed', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await field(page, 'Salt wanted, of everything in the bowl').fill('1.5');
    await page.getByLabel('Family', { exact: true }).selectOption({ label: 'Emulsified sausage' });
    await page.getByRole('button', { name: 'Begin with its usual shares' }).click();
    await page.locator('.mix-line').first().waitFor();
    expect(await field(page, 'Salt wanted, of everything in the bowl').inputValue()).toBe('1.5');
  });
});

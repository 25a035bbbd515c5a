import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { awake, expectAnswer, expectOddTextsKept, field, ODD_TIMEOUT_MS, saved, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/lean-and-fat/';
const DEMO = `${PATH}#demo=country-terrine`;

interface Material {
  name: string;
  fat: string;
  price?: string;
  stock?: string;
}

/** Describes invented materials off their packs. */
async function describeMaterials(page: Page, materials: readonly Material[]): Promise<void> {
  await awake(page);
  for (const [index, { name, fat, price, stock }] of materials.entries()) {
    await page.getByRole('button', { name: 'Add a material' }).click();
    const row = page.locator('.ledger-material').nth(index);
    await row.waitFor();
    await row.getByRole('combobox', { name: 'Material' }).fill(name);
    // The list lies over what follows until the box is left.
    await page.keyboard.press('Tab');
    await row.locator('summary').click();
    await field(row, 'Fat in it').fill(fat);
    if (price) await field(row, 'Price').fill(price);
    if (stock) await field(row, 'There is').fill(stock);
  }
}

const LEAN: Material = { name: 'Hill deer lean', fat: '3', price: '9' };
const FAT: Material = { name: 'Marram back fat', fat: '88', price: '2' };

async function square(page: Page, target: string): Promise<void> {
  await describeMaterials(page, [LEAN, FAT]);
  await field(page, 'Weight to make, fixed materials included').fill('10');
  await field(page, 'Fat wanted, of the blend').fill(target);
  await page.getByLabel('First free material').selectOption({ label: LEAN.name });
  await page.getByLabel('Second free material').selectOption({ label: FAT.name });
}

describe('the name it is sold under', () => {
  it('stands beside the target with its limits and their source, and stops a square that breaks it', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await square(page, '52');
    await page
      .getByLabel('Sold in the United States under the name')
      .selectOption({ label: 'Fresh pork sausage' });
    // 9 CFR 319.141: fat at most 50 %, water or ice at most 3 % of all that goes in.
    const limits = page.locator('table.figures', { hasText: 'Standard of “Fresh pork sausage”' });
    await expect
      .poll(() => limits.textContent())
      .toMatch(/fat at most 50 % of the finished product.*9 CFR 319\.141/);
    const verdicts = page.locator('section[aria-labelledby="square"] .verdict');
    await expect
      .poll(() => verdicts.allTextContents())
      .toEqual([
        expect.stringMatching(/^FAIL Fat 52\.00 %: not to be sold as “Fresh pork sausage”/),
        expect.stringMatching(/^CANNOT TELL Water and ice/),
      ]);
    await expect.poll(() => page.locator('.sheet-stops').textContent()).toMatch(/not to be sold as/);
    await field(page, 'Fat wanted, of the blend').fill('49');
    await expect.poll(() => verdicts.first().getAttribute('data-state')).toBe('pass');
    expect(await page.locator('.sheet-stops').count()).toBe(0);
    await page.getByRole('button', { name: 'Find the cheapest blend' }).click();
    // Fat costs least: by its bound the cheapest blend holds half of it. Derived.
    const cheapest = page.locator('section[aria-labelledby="cheapest"]');
    await expect.poll(() => cheapest.locator('.verdict').first().textContent()).toMatch(/^PASS Fat 50\.00 %/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expect.poll(() => limits.count()).toBe(1);
    expect(visit.problems).toEqual([]);
  });
});

describe('the square', () => {
  it('from nothing by the keyboard alone at 320 px', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    for (const { name, fat } of [LEAN, FAT]) {
      await tabTo(page, 'Add a material');
      await page.keyboard.press('Enter');
      const row = page.locator('.ledger-material').last();
      // A new material's name has the focus.
      await expect
        .poll(() =>
          row.getByRole('combobox', { name: 'Material' }).evaluate((box) => box === document.activeElement),
        )
        .toBe(true);
      await page.keyboard.type(name);
      await tabTo(page, new RegExp(`Pack figures.*${name}`));
      await page.keyboard.press('Enter');
      await tabTo(page, 'Fat in it');
      await page.keyboard.type(fat);
    }
    await tabTo(page, 'Weight to make, fixed materials included');
    await page.keyboard.type('10');
    await tabTo(page, 'Fat wanted, of the blend');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('25');
    await tabTo(page, 'First free material');
    await page.keyboard.press('ArrowDown');
    await tabTo(page, 'Second free material');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    // Calculated: 3 % and 88 % to 25 % is 74.12 : 25.88.
    await expectAnswer(page, 'Shares of the two', /^74\.12 : 25\.88$/);
    await expectAnswer(page, LEAN.name, /7412\sg/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Shares of the two', /^74\.12 : 25\.88$/);
    expect(visit.problems).toEqual([]);
  });

  it('is drawn from its own numbers', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await square(page, '25');
    // Derived: 88 − 25 and 25 − 3.
    await expect
      .poll(() => page.locator('.square svg').getAttribute('aria-label'))
      .toMatch(/3\.0 % fat .* 88\.0 % to 25\.0 %; 63\.0 parts of the first, 22\.0 of the second/);
  });

  it('refuses a target outside the two and says what they reach', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await square(page, '90');
    await expect
      .poll(() => page.locator('.field .finding').allTextContents())
      .toContainEqual(expect.stringMatching(/cannot be reached.*3\.0 % to 88\.0 %/s));
    expect(await page.locator('.square').count()).toBe(0);
  });

  it('odd texts as the fat wanted are kept and never computed with', {
    timeout: ODD_TIMEOUT_MS,
  }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await square(page, '25');
    await expectAnswer(page, 'Shares of the two', /^74\.12/);
    await expectOddTextsKept(page, field(page, 'Fat wanted, of the blend'), {
      answers: (holds) => expect.poll(() => page.locator('.square').count()).toBe(holds ? 1 : 0),
    });
  });
});

describe('the cheapest blend', () => {
  const threeOf = (stock: string): Material[] => [
    { name: 'Lean A', fat: '5', price: '8', stock },
    { name: 'Cheek B', fat: '30', price: '3', stock },
    { name: 'Fat C', fat: '85', price: '2', stock },
  ];

  it('fetches its solver when it is asked for and not before', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    await describeMaterials(page, threeOf('20'));
    await field(page, 'Weight to make, fixed materials included').fill('10');
    await field(page, 'Fat, at most').fill('30');
    const before = fetched.length;
    await page.getByRole('button', { name: 'Find the cheapest blend' }).click();
    // Derived: all cheek, 30 % fat at 3.00 a kg; a kilogram of fat and lean to 30 % costs more.
    await expectAnswer(page, 'Cost of the cheapest blend', /^30\.00$/);
    expect(fetched.slice(before).some((url) => url.endsWith('.js'))).toBe(true);
    expect(visit.problems).toEqual([]);
  });

  it('says what more stock would save, and is withdrawn when a figure changes', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await describeMaterials(page, threeOf('5'));
    await field(page, 'Weight to make, fixed materials included').fill('10');
    await field(page, 'Fat, at most').fill('30');
    await page.getByRole('button', { name: 'Find the cheapest blend' }).click();
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(expect.stringMatching(/Another kilo of Cheek B would save/));
    await field(page, 'Fat, at most').fill('31');
    await expect.poll(() => page.getByText('Something was changed since').count()).toBe(1);
    expect(await page.getByText('Cost of the cheapest blend').count()).toBe(0);
  });

  it('that cannot be says which bound must give way and by how much', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await describeMaterials(page, threeOf('2'));
    await field(page, 'Weight to make, fixed materials included').fill('10');
    await page.getByRole('button', { name: 'Find the cheapest blend' }).click();
    // Derived: three stocks of 2 kg are 6 kg, 4 kg short of ten.
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(
        expect.stringMatching(/6\.000 kg would be needed, 2\.000 kg is there \(4\.000 kg more\)/),
      );
    expect(visit.problems).toEqual([]);
  });

  it('is written into the formula, and taken out again', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await describeMaterials(page, threeOf('20'));
    await field(page, 'Weight to make, fixed materials included').fill('10');
    await field(page, 'Fat, at most').fill('30');
    await page.getByRole('button', { name: 'Find the cheapest blend' }).click();
    await page.getByRole('button', { name: 'Write the cheapest blend into the formula' }).click();
    await page.getByRole('button', { name: 'Put the old lines back' }).waitFor();
    await saved(page);
    await page.goto('/worksheets/batch-formula/', { waitUntil: 'networkidle' });
    const line = page.getByRole('listitem', { name: 'Cheek B' });
    await line.waitFor();
    expect(await field(line, 'Amount').inputValue()).toBe('10000');
  });

  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await describeMaterials(page, threeOf('5'));
    await field(page, 'Weight to make, fixed materials included').fill('10');
    await page.getByRole('button', { name: 'Find the cheapest blend' }).click();
    await page.getByText('Cost of the cheapest blend').waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)('%s: materials, square and a box for each fat test', async (format) => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await square(page, '25');
    await expectAnswer(page, 'Shares of the two', /^74\.12/);
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages).toHaveLength(1);
    await expectPrintable(page, pages, format);
    for (const wanted of [
      /Hill deer lean/,
      /10 ?kg ?E/,
      /25 ?% ?E/,
      /7411\.8 ?W/,
      /Fat test/,
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
    expect(pages[0]?.text).toMatch(/Fat test/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

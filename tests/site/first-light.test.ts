import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { awake, expectAnswer, field, saved, tabTo } from './bench.ts';
import { openPage } from './browser.ts';
import { pdfOf, readPdf } from './pdf.ts';

async function line(page: Page, words: string, amount: string): Promise<void> {
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

async function reading(page: Page, clock: string, core: string): Promise<void> {
  await page.getByLabel('Time', { exact: true }).fill(clock);
  await page.getByLabel('Core', { exact: true }).fill(core);
  await page.keyboard.press('Enter');
}

it('a batch typed from nothing goes the whole way: formula, salt and cure, mould, cook, chill, two printed pages', async () => {
  await using visit = await openPage('/404.html', { timezone: 'America/New_York' });
  const { page } = visit;
  await page.clock.setFixedTime(new Date('2026-05-05T22:00:00Z'));
  await page.goto('/', { waitUntil: 'networkidle' });
  await page.getByRole('link', { name: 'Start a new batch' }).click();
  await awake(page);
  await page.goto('/worksheets/batch-formula/');
  await awake(page);
  await field(page, 'Product').fill('Trial terrine');
  await field(page, 'Batch number').fill('20260505-A');
  await line(page, 'pork shoulder 80', '2000');
  await line(page, 'back fat', '800');
  await line(page, 'salt, table', '42');
  await page.getByRole('button', { name: 'Add a curing salt' }).click();
  await page.getByLabel('Sodium nitrite in it, by the pack').fill('6.25');
  await page.getByLabel('Nitrate in it, by the pack').fill('0');
  await field(page.locator('.mix-line').last(), 'Amount').fill('5.4');
  await saved(page);

  await page.goto('/worksheets/salt-and-cure/');
  await awake(page);
  await page.getByLabel('Whose rule on nitrite').selectOption('us-federal');
  await field(page, 'Smallest step of the scale').fill('0.1');
  // Derived: 5.4 g × 62.5 mg/g on 2.800 kg of meat and fat.
  await expect.poll(() => page.locator('main').textContent()).toMatch(/120\.5 mg\/kg/);
  await saved(page);

  await page.goto('/worksheets/mould-and-fill/');
  await awake(page);
  await page.getByLabel('Add a mould').selectOption({ label: 'Terrine, 2 L class (290 × 95 × 75 mm)' });
  await page.getByRole('button', { name: 'Add the mould' }).click();
  await expectAnswer(page, 'Fill each mould with', /1862\sg/);
  await saved(page);

  await page.goto('/worksheets/cook-log/');
  await awake(page);
  await page.getByLabel('Whose rule on cooking').selectOption('us-food-code');
  await page.getByLabel('The one limit the plan names').selectOption('fc-155F');
  await page.getByLabel('Reads high (+) or low (−) by', { exact: true }).fill('0');
  await page.getByLabel('Error, ±', { exact: true }).fill('0');
  for (const [clock, core] of [
    ['0900', '12.0'],
    ['1000', '55.2'],
    // FDA Food Code 3-401.11(A)(2): comminuted meat 68 °C for 17 s.
    ['1030', '68.1'],
    ['1031', '68.2'],
    ['1045', '60.0'],
    ['1115', '40.2'],
    ['1200', '20.4'],
    ['1300', '11.0'],
    ['1400', '4.6'],
  ] as const) {
    await reading(page, clock, core);
  }
  await expect.poll(() => page.locator('.stand').textContent()).toMatch(/PASS.*Limit complete/s);
  await saved(page);

  await page.goto('/worksheets/press-and-chill/');
  await awake(page);
  // Two 400 g tins on a 240 × 100 mm board press with about 0.3 kPa: common practice, no source.
  await field(page, 'Board, length').fill('240');
  await field(page, 'Board, width').fill('100');
  await field(page, 'Load on one board').fill('800 g');
  await expect.poll(() => page.locator('main').textContent()).toMatch(/0\.33?\skPa/);
  await page.getByLabel('Whose rule on cooling').selectOption('us-food-code');
  // What the plan's own rules say; the other rule sets stand beside them in a table.
  const states = () =>
    page
      .locator('div.verdict')
      .evaluateAll((all) => [...new Set(all.map((one) => one.getAttribute('data-state')))]);
  await expect.poll(states).toEqual(['pass']);
  await saved(page);

  await page.goto('/worksheets/batch-sheet/');
  await page.locator('.verdict').first().waitFor();
  const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
  expect(pages).toHaveLength(2);
  const [bench, record] = pages;
  expect(bench?.text).toContain('Trial terrine');
  expect(bench?.text).toContain('20260505-A');
  expect(bench?.text).toContain('meat block: 2800 g');
  expect(bench?.text).toMatch(/120\.[56] on meat block/);
  expect(record?.text).toMatch(/PASS .*155 °F \(68 °C\)/);
  expect(record?.text).toMatch(/PASS .*135 °F \(57 °C\) to 41 °F \(5 °C\)/);
  expect(record?.text).not.toContain('DEMO');
  expect(visit.problems.filter((problem) => !problem.startsWith('404'))).toEqual([]);
});

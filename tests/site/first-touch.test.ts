import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { field, saved } from './bench.ts';
import { openPage } from './browser.ts';

/** Every script of the worksheet takes its time, as over a kitchen's weak network. */
async function slowScripts(page: Page, delayMs: number): Promise<void> {
  await page.route(/\/_astro\/.*\.js$/, async (route) => {
    await new Promise((done) => setTimeout(done, delayMs));
    await route.continue();
  });
}

describe('a worksheet nobody has touched yet', () => {
  it('says that it is ready for a new batch, and its fields can be typed in', async () => {
    await using visit = await openPage('/worksheets/salt-and-cure/');
    const { page } = visit;
    await expect
      .poll(() => page.locator('.worksheet-batch').textContent())
      .toContain('A new batch begins with the first thing you type');
    expect(await page.locator('.worksheet input[readonly]').count()).toBe(0);
    expect(await page.locator('.worksheet select[disabled]').count()).toBe(0);
    expect(visit.problems).toEqual([]);
  });

  it('loses no letter that is typed while its code is on the way', async () => {
    await using visit = await openPage('/worksheets/batch-formula/');
    const { page } = visit;
    await slowScripts(page, 400);
    const name = field(page, 'Product');
    await name.focus();
    await page.keyboard.type('Hare terrine, first trial', { delay: 30 });
    await page.locator('.worksheet[data-life="open"]').waitFor();
    expect(await name.inputValue()).toBe('Hare terrine, first trial');
    await page.keyboard.type(' of two');
    await saved(page);
    await page.reload({ waitUntil: 'networkidle' });
    await expect.poll(() => name.inputValue()).toBe('Hare terrine, first trial of two');
    expect(visit.problems).toEqual([]);
  });

  it('does what was pressed while its code was on the way, once', async () => {
    await using visit = await openPage('/worksheets/batch-formula/');
    const { page } = visit;
    await slowScripts(page, 400);
    const rows = page.locator('.mix-lines > li');
    const before = await rows.count();
    await page.getByRole('button', { name: 'Add an ingredient' }).first().click();
    await page.locator('.worksheet[data-life="open"]').waitFor();
    await expect.poll(() => rows.count()).toBe(before + 1);
  });

  it('leaves shut what has nothing to do, even if it was pressed', async () => {
    await using visit = await openPage('/worksheets/chill-budget/');
    const { page } = visit;
    const up = page.getByRole('button', { name: 'Move up: Lean' });
    await up.click();
    await page.locator('.worksheet[data-life="blank"]').waitFor();
    await expect.poll(() => page.getByRole('button', { name: 'Add it' }).isDisabled()).toBe(false);
    expect(await up.isDisabled()).toBe(true);
    expect(
      await page.locator('.row-tools').first().getByRole('button').first().getAttribute('aria-label'),
    ).toBe('Move up: Lean');
  });
});

it('a worksheet with a batch on the device opens it without being touched', async () => {
  await using visit = await openPage('/worksheets/batch-formula/#demo=country-terrine');
  const { page } = visit;
  await saved(page);
  await page.goto('/worksheets/salt-and-cure/', { waitUntil: 'networkidle' });
  await page.locator('.worksheet[data-life="open"]').waitFor();
  expect(await page.locator('.worksheet-batch').textContent()).toContain('DEMO');
  expect(visit.problems).toEqual([]);
});

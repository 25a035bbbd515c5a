import { describe, expect, it } from 'vitest';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { pdfOf, readPdf, smallestTypePt } from './pdf.ts';

describe('the page that compares batches', () => {
  it('lays an invented series side by side, draws its limits, and keeps nothing of it', async () => {
    await using visit = await openPage('/compare/');
    const { page } = visit;
    await page.getByText('Nothing is kept here yet.').first().waitFor();
    await page.getByRole('button', { name: 'Look at an invented series' }).click();
    await page.getByRole('checkbox', { name: /20260317-A/ }).check();
    await page.getByRole('checkbox', { name: /20260210-A/ }).check();
    await page.getByRole('checkbox', { name: /20260106-A/ }).check();
    const side = page.getByRole('region', { name: 'Batches side by side' });
    // Derived from the weights of the series: 1 − 3370 ÷ 3720 and 1 − 3497 ÷ 3720; the third was never weighed.
    await expect
      .poll(() => side.getByRole('row', { name: /^Cook loss/ }).textContent())
      .toBe('Cook loss ≠ differs9.4 %not recorded6.0 %');
    expect(await side.getByRole('row', { name: /^Salt from all/ }).textContent()).not.toContain('differs');
    await page.getByLabel('Only rows that differ').check();
    expect(await side.getByRole('row', { name: /^Salt from all/ }).count()).toBe(0);

    await page.getByText(/^Mean 6\.2 %; control limits 3\.8 to 8\.6 %/).waitFor();
    await page.getByText('A control limit is no safety limit.').waitFor();
    await page.getByText(/Trial limits: they rest on 13 batches/).waitFor();
    const table = page.getByRole('region', { name: 'Cook loss, batch by batch' });
    expect(await table.getByRole('row', { name: /20260317-A/ }).textContent()).toMatch(
      /9\.4.*! beyond the control limit/,
    );
    expect(await table.getByRole('row', { name: /20260210-A/ }).textContent()).toContain('not recorded');
    expect(await page.locator('.control-picture').getAttribute('aria-label')).toMatch(
      /Cook loss: 13 of 14 batches/,
    );
    await page
      .getByText(/Training kettle 2/)
      .first()
      .waitFor();
    expect(await page.locator('.oven-list').textContent()).toMatch(/median 0\.9\d over 14 cooks/);

    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    const printed = pages.map(({ text }) => text).join(' ');
    expect(printed).toContain('no safety limit');
    expect(printed).not.toContain('Look at an invented series');
    for (const each of pages) expect(smallestTypePt(each) ?? 9).toBeGreaterThanOrEqual(8.98);

    await page.getByRole('combobox', { name: 'Figure' }).selectOption('deviations');
    await page.getByText('A small count').waitFor();
    await page.setViewportSize({ width: 320, height: 640 });
    expect(await sidewaysScrollPx(page)).toBe(0);
    await page.getByRole('button', { name: 'Back to my own batches' }).click();
    await page.getByText('Nothing is kept here yet.').first().waitFor();
    expect(visit.problems).toEqual([]);
  });

  it('draws no limits from one batch, and renames, deletes and brings back an oven record', async () => {
    await using visit = await openPage('/worksheets/batch-formula/#demo=country-terrine');
    const { page } = visit;
    await page.locator('.mix-line').first().waitFor();
    await page.waitForTimeout(700);
    const kept = { at: '2026-03-10T12:00:00-04:00', filmFactor: 1.1, heatingFactor: 1, mediumShiftC: 2 };
    await page.evaluate(
      (oven) => localStorage.setItem('larderwright.ovens', JSON.stringify([{ name: 'Deck 1', ...oven }])),
      kept,
    );
    await page.goto('/compare/');
    await page.getByText(/1 of the batches have this figure: too few to draw limits/).waitFor();
    const name = page.getByRole('textbox', { name: 'New name for Deck 1' });
    await name.fill(' ');
    await page.getByRole('button', { name: 'Rename' }).click();
    await page.getByText('A record needs a name.').waitFor();
    await name.fill('Deck oven, upper');
    await page.getByRole('button', { name: 'Rename' }).click();
    await page.getByText('Renamed: Deck 1 is now Deck oven, upper.').waitFor();
    const names = () => page.evaluate(() => localStorage.getItem('larderwright.ovens'));
    expect(await names()).toContain('Deck oven, upper');
    await page.getByRole('button', { name: 'Delete the record of Deck oven, upper' }).click();
    expect(await names()).toBe('[]');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await names()).toContain('Deck oven, upper');
    expect(visit.problems).toEqual([]);
  });
});

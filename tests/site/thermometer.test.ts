import { describe, expect, it } from 'vitest';
import { awake, expectAnswer, expectNoBrokenNumber, field, saved, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/thermometer/';

/** Today in the browser, as a date box takes it. */
const today = () => {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

describe('a thermometer that is checked', () => {
  it('by keyboard at 320 px rules the log that names it, on the cook log and on paper', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    for (const [label, text] of [
      ['Height above sea level', '1000'],
      ['Thermometer', 'Blue 2'],
      ['Shows in ice', '0.6'],
      ['Shows in boiling water', '97.3'],
      ['Step of its display', '0.1'],
      ['Error after the check, ±', '0.5'],
    ] as const) {
      await tabTo(page, label);
      await page.keyboard.type(text);
    }
    await page.getByLabel('Checked on').fill(today());
    // ICAO standard atmosphere at 1000 m and steam tables: 96.7 °C
    await expectAnswer(page, 'Water boils here at', /^96\.[67] °C/);
    await expect.poll(() => page.locator('.verdict-word').first().textContent()).toBe('PASS');
    // Derived: 70 + 0.6 + 0.5, rounded up to the tenth
    await expectAnswer(page, 'Its display must show', /^71\.[12] °C \(1(59|60)\.\d °F\)$/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await expectNoBrokenNumber(page);
    await saved(page);
    // Paper is as wide as it is: the narrow screen is no measure of it.
    await page.setViewportSize({ width: 1000, height: 800 });
    const pages = await readPdf(await pdfOf(page, { format: 'A4' }));
    await expectPrintable(page, pages, 'A4');
    expect(pages.length).toBe(1);

    const link = await page.evaluate(() => location.hash);
    await page.goto(`${new URL(page.url()).origin}/worksheets/cook-log/${link}`);
    await awake(page);
    await page.getByLabel('Checked thermometer').selectOption({ label: 'Blue 2' });
    await expect
      .poll(() => page.locator('.probe').first().textContent())
      .toMatch(/Off at the limit: \+0\.[67] °C; error ± 0\.5 °C; its display must show/);
    expect(await page.getByRole('textbox', { name: /Reads high/ }).count()).toBe(0);

    await saved(page);
    await page.goto(`${new URL(page.url()).origin}${PATH}${link}`);
    await awake(page);
    await field(page, 'Shows in ice').fill('1.4');
    await expect.poll(() => page.locator('.verdict-word').first().textContent()).toBe('FAIL');
    await expectAnswer(page, 'Its display must show', /^Nothing: no good check$/);
    await expect
      .poll(() => page.locator('.finding').allTextContents())
      .toContainEqual(
        expect.stringMatching(/shows 1\.4 °C \(2\.6 °F\) too much in ice.*Take it out of use/s),
      );
    expect(visit.problems).toEqual([]);
  });
});

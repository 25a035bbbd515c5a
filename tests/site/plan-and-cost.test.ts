import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { awake, expectAnswer, expectOddTextsKept, field, ODD_TIMEOUT_MS, saved, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/plan-and-cost/';
const DEMO = `${PATH}#demo=country-terrine`;

describe('a plan from nothing', () => {
  it('by the keyboard alone at 320 px, from portions back to the mix', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Portions');
    await page.keyboard.type('40');
    // Derived: 40 × 70 g ÷ 0.97 ÷ 0.92 ÷ 0.98 + 50 g. Losses multiply (common practice, no source).
    await expectAnswer(page, 'Finished weight', /2887\sg/);
    await expectAnswer(page, 'Raw fill', /3138\sg/);
    await expectAnswer(page, 'Mix to make', /3252\sg/);
    await expectAnswer(page, 'Times the formula', /Cannot tell/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Mix to make', /3252\sg/);
    expect(visit.problems).toEqual([]);
  });

  it('counts its steps back from the hour of serving', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await page.getByLabel('Step to add').selectOption('press-and-chill');
    await page.getByRole('button', { name: 'Add the step' }).click();
    await page.getByLabel('Served on').fill('2030-05-03T12:00');
    // Derived: 12 and 24 h (common practice, no source) before noon on Friday 3 May 2030.
    await expect
      .poll(() => page.locator('.ledger-step .ledger-figures').textContent())
      .toMatch(/Not before.*Thu 2 May, 12:00.*Begin by.*Fri 3 May, 00:00/);
    await page.getByRole('button', { name: 'Remove: Press and chill' }).click();
    await page.getByRole('button', { name: 'Put it back: Press and chill' }).click();
    await page.locator('.ledger-step').waitFor();
    await saved(page);
    await page.reload();
    await page.locator('.ledger-step').waitFor();
    expect(await page.getByLabel('Served on').inputValue()).toBe('2030-05-03T12:00');
  });
});

describe('a plan of a formula', () => {
  it('prices every line, and its totals are the sums of what it shows', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    const rows = page.locator('li.ledger-buy');
    await rows.first().waitFor();
    await field(page, 'Portions').first().fill('40');
    for (const row of await rows.all()) await field(row, 'Price').fill('3.33');
    await field(page, 'Tax on the price').fill('10');
    await expect
      .poll(async () => (await page.locator('.ledger-figures dd').allTextContents()).length)
      .toBeGreaterThan(20);
    await expectAnswer(page, 'Food, the batch', /^\d+\.\d\d$/);
    const costs = await rows.locator('.ledger-figures div:last-child dd').allTextContents();
    const cents = costs.reduce((sum, cost) => sum + Math.round(Number(cost) * 100), 0);
    expect(
      await page.locator('.answer', { hasText: 'Food, the batch' }).locator('.answer-value').textContent(),
    ).toBe((cents / 100).toFixed(2));
    // Blank labour is unknown, never nothing.
    await expectAnswer(page, 'Food, labour and overhead', /Cannot tell/);
    await expectAnswer(page, 'A portion, before tax', /^\d+\.\d\d$/);
    expect(visit.problems).toEqual([]);
  });

  it('writes the scaled weights into the formula and gives the old ones back', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('li.ledger-buy').first().waitFor();
    await field(page, 'Portions').first().fill('20');
    await page.getByRole('button', { name: 'Write these weights into the formula' }).click();
    await expectAnswer(page, 'Times the formula', /^× 1\.000$/);
    await page.getByRole('button', { name: 'Put the old weights back' }).click();
    await expectAnswer(page, 'Times the formula', /^× 0\./);
  });

  it('tells when the chiller is asked for too much, at its field', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await page.locator('li.ledger-buy').first().waitFor();
    await field(page, 'Portions').first().fill('100');
    await field(page, 'The chiller may take at once').fill('2');
    await expect
      .poll(() => page.locator('.field .finding').allTextContents())
      .toContainEqual(expect.stringMatching(/Caution.*chilled at once/s));
  });

  it('odd texts as a loss are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await awake(page);
    await field(page, 'Portions').fill('40');
    await expectAnswer(page, 'Mix to make', /3252\sg/);
    await expectOddTextsKept(page, field(page, 'Lost in cooking and chilling, of the fill'), {
      answers: 'Mix to make',
    });
  });

  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(DEMO, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await page.locator('li.ledger-buy').first().waitFor();
    await page.getByRole('button', { name: 'Put in the steps of a cooked terrine' }).click();
    await page.locator('.ledger-step').first().waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)(
    '%s: list, costs, timeline, every input with its flag',
    async (format) => {
      await using visit = await openPage(DEMO);
      const { page } = visit;
      const rows = page.locator('li.ledger-buy');
      await rows.first().waitFor();
      await field(page, 'Portions').first().fill('40');
      await field(rows.first(), 'Price').fill('14');
      await field(page, 'Currency').fill('crowns');
      await page.getByLabel('Served on').fill('2030-05-03T12:00');
      await page.getByRole('button', { name: 'Put in the steps of a cooked terrine' }).click();
      await expectAnswer(page, 'Mix to make', /3252\sg/);
      await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
      const pages = await readPdf(await pdfOf(page, { format }));
      await expectPrintable(page, pages, format);
      const text = pages.map((each) => each.text).join(' ');
      for (const wanted of [
        /Venison shoulder, trimmed/,
        /40 ?E/,
        /70 ?g ?D/,
        /8 ?% ?D/,
        /14 crowns \/ kg ?E/,
        /3251\.6 ?g ?W/,
        /Press and chill/,
        /Fri 3 May, 12:00/,
        /Gross profit, of price/,
        /DEMO/,
        /calc \d/,
        /it validates no process/,
      ]) {
        expect(text).toMatch(wanted);
      }
      await page.getByLabel(/Costs and prices on the card/).uncheck();
      const bench = await readPdf(await pdfOf(page, { format }));
      expect(bench.map((each) => each.text).join(' ')).not.toMatch(/Gross profit|crowns/);
      expect(visit.problems).toEqual([]);
    },
  );

  it('is an empty form where no script runs', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const text = (await readPdf(await pdfOf(visit.page, { format: 'A4' })))
      .map((each) => each.text)
      .join(' ');
    expect(text).toMatch(/To buy/);
    expect(text).toMatch(/Grind, mix and test poach/);
    expect(text).toMatch(/it validates no process/);
  });
});

import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import {
  awake,
  expectAnswer,
  expectOddTextsKept,
  field,
  ODD_TEXTS,
  ODD_TIMEOUT_MS,
  saved,
  tabTo,
} from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/slice-and-price/';
const DEMO = `${PATH}#demo=country-terrine`;
const FINISHED = 'Finished weight, all moulds, after chilling';

describe('a cut from nothing', () => {
  it('by weight, by the keyboard alone at 320 px', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'Cut into');
    await page.keyboard.press('ArrowDown');
    await field(page, 'Weight of a portion').waitFor();
    await tabTo(page, FINISHED);
    await page.keyboard.type('2112');
    await tabTo(page, 'Weight of a portion');
    await page.keyboard.type('50');
    // Derived: 2112 × 0.97 ÷ 50 is 40.97.
    await expectAnswer(page, 'Portions', /^40$/);
    await expectAnswer(page, 'Sold in all', /2000\sg/);
    await expectAnswer(page, 'A portion', /Cannot tell/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Portions', /^40$/);
    expect(visit.problems).toEqual([]);
  });
});

describe('the cut of a batch', () => {
  it('takes moulds and their length from the batch, ends and blade off', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await field(page, FINISHED).waitFor();
    await field(page, FINISHED).fill('3480');
    // Derived: (290 − 2 × 10) ÷ (12 + 0.5) is 21.6; two moulds of 1740 g, 12 ÷ 290 of each.
    await expectAnswer(page, 'Slices, a mould', /^21$/);
    await expectAnswer(page, 'Slices in all', /^42$/);
    await expectAnswer(page, 'A slice weighs', /72\.0\sg/);
    await field(page, 'Taken by the blade, each slice').fill('0');
    // Derived: a wire takes nothing, 22.5.
    await expectAnswer(page, 'Slices, a mould', /^22$/);
    expect(visit.problems).toEqual([]);
  });

  it('notes a slice outside the habit of its family, at the field', async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await field(page, 'Slice').waitFor();
    await field(page, 'Slice').fill('25');
    // Country and game terrines 10 to 14 mm: common practice, no source.
    await expect
      .poll(() => page.locator('.field .finding').allTextContents())
      .toContainEqual(expect.stringMatching(/Note.*25 mm; usually 10 to 14 mm/s));
  });

  it('is priced from the plan once every line has its price', async () => {
    await using visit = await openPage('/worksheets/plan-and-cost/#demo=country-terrine');
    const { page } = visit;
    const rows = page.locator('li.ledger-buy');
    await rows.first().waitFor();
    await field(page, 'Portions').first().fill('40');
    for (const row of await rows.all()) await field(row, 'Price').fill('10');
    await expectAnswer(page, 'Food, the batch', /^\d+\.\d\d$/);
    await saved(page);
    await page.goto(PATH, { waitUntil: 'networkidle' });
    await field(page, FINISHED).fill('2900');
    await expectAnswer(page, 'A kilogram', /^\d+\.\d\d before tax$/);
    const priceOf = async (label: string) =>
      Number.parseFloat(
        (await page
          .locator('.answer', { has: page.getByText(label, { exact: true }) })
          .locator('.answer-value')
          .textContent()) ?? '',
      );
    // Derived: a pound is 0.45359237 kg; each is shown to the cent.
    expect(Math.abs((await priceOf('A pound')) - (await priceOf('A kilogram')) * 0.45359237)).toBeLessThan(
      0.01,
    );
    await field(page, 'Gross profit, of the price before tax').fill('');
    await expectAnswer(page, 'A kilogram', /Cannot tell/);
  });

  // "5 kgs" is a weight.
  it('odd texts as the finished weight are kept and no plan stands in for it', {
    timeout: ODD_TIMEOUT_MS,
  }, async () => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    const finished = field(page, FINISHED);
    await finished.fill('3480');
    await expectOddTextsKept(page, finished, {
      answers: ['Finished weight', 'Portions'],
      texts: ODD_TEXTS.filter((odd) => odd !== '5 kgs'),
    });
  });

  it('fits a phone and breaks no accessibility rule', async () => {
    await using visit = await openPage(DEMO, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await field(page, FINISHED).fill('3480');
    await expectAnswer(page, 'Slices in all', /^42$/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)('%s: cut, price and a tally to fill in', async (format) => {
    await using visit = await openPage(DEMO);
    const { page } = visit;
    await field(page, FINISHED).fill('3480');
    await expectAnswer(page, 'Slices in all', /^42$/);
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages).toHaveLength(1);
    await expectPrintable(page, pages, format);
    for (const wanted of [
      /3480 ?g ?E/,
      /12 ?mm ?D/,
      /0\.5 ?mm ?D/,
      /42 ?W/,
      /A pound/,
      /DEMO/,
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
    expect(pages[0]?.text).toMatch(/On the menu/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

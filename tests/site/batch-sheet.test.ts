import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './browser.ts';
import { type PrintedPage, pdfOf, readPdf, smallestTypePt } from './pdf.ts';

const PATH = '/worksheets/batch-sheet/';
const PAPERS = [
  { format: 'A4', choice: 'a4', widthMm: 210, heightMm: 297 },
  { format: 'Letter', choice: 'letter', widthMm: 215.9, heightMm: 279.4 },
] as const;
/** A point of type is never smaller than this on paper, and no box to write in lower or narrower. */
const LEAST_PT = 9;
const LEAST_BOX_MM = { height: 7, width: 14 };
/** Rounding of the PDF: a hundredth of a point and of a millimetre. */
const HAIR = 0.02;

async function ready(page: Page): Promise<void> {
  await page.locator('.verdict').first().waitFor();
}

async function printed(page: Page, paper: (typeof PAPERS)[number]): Promise<PrintedPage[]> {
  await page.getByLabel('Paper', { exact: true }).selectOption(paper.choice);
  await page.locator(`.sheet[data-paper="${paper.choice}"]`).first().waitFor();
  return readPdf(await pdfOf(page, { format: paper.format }));
}

/** Boxes of the sheet smaller than a pencil needs, in words. */
function smallBoxes(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const mm = 25.4 / 96;
    return Array.from(document.querySelectorAll('.sheet :is(.write-in-box, .log-time, .log-temp, tbody td)'))
      .filter((box) => (box.textContent ?? '').trim() === '' || box.querySelector('.write-in-unit'))
      .map((box) => ({ box, size: box.getBoundingClientRect() }))
      .filter(({ size }) => size.height * mm < least.height - 0.05 || size.width * mm < least.width - 0.05)
      .map(
        ({ box, size }) =>
          `${box.className || box.tagName} ${(size.width * mm).toFixed(1)} × ${(size.height * mm).toFixed(1)}`,
      );
  }, LEAST_BOX_MM);
}

/** Text that sticks out of its page or is cut off, in words. */
function cutOff(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    Array.from(document.querySelectorAll('.sheet')).flatMap((sheet) => {
      const inside = sheet.getBoundingClientRect();
      return Array.from(sheet.querySelectorAll('p, span, td, th, li, h2, h3'))
        .filter((part) => {
          const size = part.getBoundingClientRect();
          return size.right > inside.right + 1 || size.bottom > inside.bottom + 1;
        })
        .map((part) => `${part.tagName} ${part.textContent?.slice(0, 40)}`);
    }),
  );
}

describe.each(PAPERS)('on $format', (paper) => {
  it('the demo that passes is one page a copy with the right numbers, in type and boxes a cold hand can use', async () => {
    await using visit = await openPage('/');
    const { page } = visit;
    await page.getByRole('link', { name: 'Open one that passes' }).click();
    await ready(page);
    const pages = await printed(page, paper);
    expect(pages.map(({ text }) => text.split(' page 1 of 1')[0])).toEqual([
      expect.stringContaining('Batch sheet: bench copy'),
      expect.stringContaining('Batch sheet: record copy'),
    ]);
    const [bench, record] = pages;
    for (const each of pages) {
      expect(each.widthMm).toBeCloseTo(paper.widthMm, 0);
      expect(each.heightMm).toBeCloseTo(paper.heightMm, 0);
      expect(smallestTypePt(each)).toBeGreaterThanOrEqual(LEAST_PT - HAIR);
      expect(each.text).toContain('DEMO, invented');
      expect(each.text).toContain('it validates no process');
    }
    // Derived by hand from the demo's weights: 5.4 g × 62.5 mg/g on 2.800 kg and on 3.8501 kg.
    expect(bench?.text).toContain('meat block: 2800 g');
    expect(bench?.text).toContain('Total in the bowl: 3850.1 g');
    expect(bench?.text).toMatch(/120\.[56] on meat block, 87\.7 on total as sodium nitrite/);
    expect(bench?.text).toMatch(/1\.64\s%.*2\.96\s%/);
    expect(bench?.text).toContain('PASS');
    expect(record?.text).toContain('71.5 °C');
    expect(record?.text).toMatch(/PASS .*Counted on readings: 25 min/);
    expect(record?.text).not.toMatch(/FAIL|CANNOT TELL|STOP/);
    expect(visit.problems).toEqual([]);

    await page.emulateMedia({ media: 'print' });
    expect(await smallBoxes(page)).toEqual([]);
    expect(await cutOff(page)).toEqual([]);
  });

  it('the demo that fails prints a stop in words on both copies', async () => {
    await using visit = await openPage(`${PATH}#demo=pate-en-croute-cooling-fails`);
    await ready(visit.page);
    const pages = await printed(visit.page, paper);
    expect(pages).toHaveLength(2);
    for (const { text } of pages) {
      expect(text).toMatch(/STOP FAIL, hold, do not serve: .*135 °F \(57 °C\) to 70 °F \(21 °C\)/);
    }
    expect(pages[1]?.text).toContain('DISCARD');
  });

  it('an empty sheet prints as a form to write on, and judges nothing', async () => {
    await using visit = await openPage(PATH);
    const pages = await printed(visit.page, paper);
    expect(pages).toHaveLength(2);
    for (const each of pages) {
      expect(each.text).not.toMatch(/PASS|FAIL/);
      expect(smallestTypePt(each)).toBeGreaterThanOrEqual(LEAST_PT - HAIR);
    }
    await visit.page.emulateMedia({ media: 'print' });
    expect(await smallBoxes(visit.page)).toEqual([]);
    expect(await cutOff(visit.page)).toEqual([]);
  });
});

describe('a long formula', () => {
  it('moves to a weigh-up card of its own, and no line is dropped', async () => {
    await using visit = await openPage(`${PATH}#demo=country-terrine`);
    const { page } = visit;
    await ready(page);
    await page.goto('/worksheets/batch-formula/');
    await page.locator('.mix-line').first().waitFor();
    const names: string[] = [];
    for (let line = 0; line < 16; line += 1) {
      await page.getByRole('button', { name: 'Add an ingredient' }).click();
      const name = `Garnish number ${line + 1} of the long list`;
      names.push(name);
      await page.locator('.mix-line').last().getByRole('combobox').first().fill(name);
      await page.keyboard.press('Tab');
    }
    await page.waitForTimeout(700);
    await page.goto(PATH);
    await ready(page);
    const pages = await printed(page, PAPERS[0]);
    expect(pages.length).toBeGreaterThan(2);
    const all = pages.map(({ text }) => text).join(' ');
    for (const name of names) expect(all).toContain(name);
    await page.emulateMedia({ media: 'print' });
    expect(await cutOff(page)).toEqual([]);
  });
});

describe('printing', () => {
  it('keeps the assessment as issued, and shows what reads otherwise once the batch is changed', async () => {
    await using visit = await openPage(`${PATH}#demo=country-terrine`);
    const { page } = visit;
    await ready(page);
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect.poll(() => page.getByText(/nothing reads otherwise today/).count()).toBe(1);
    await page.waitForTimeout(600);
    await page.goto('/worksheets/salt-and-cure/');
    await page.getByLabel('Whose rule on nitrite').selectOption('');
    await page.waitForTimeout(600);
    await page.goto(PATH);
    await expect
      .poll(() => page.locator('.as-issued').textContent())
      .toMatch(/cure\.nitrite\s*pass\s*cannot-tell/);
  });
});

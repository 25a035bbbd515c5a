import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import {
  awake,
  expectAnswer,
  expectNoBrokenNumber,
  expectOddTextsKept,
  field,
  ODD_TEXTS,
  ODD_TIMEOUT_MS,
  saved,
  tabTo,
} from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { expectPrintable, pdfOf, readPdf } from './pdf.ts';

const PATH = '/worksheets/casings/';
const SOAK = 'Casing to soak';

/** Ten invented kilograms into hog 32–35, filled firm, links of 120 g. */
async function hog(page: Page): Promise<void> {
  await awake(page);
  await page.getByLabel('Casing', { exact: true }).selectOption('hog-32-35');
  await field(page, 'To fill').fill('10');
  await field(page, 'How full').fill('100');
  await field(page, 'Weight of a link').fill('120');
  // Derived: π/4 × 33² mm² × 1.03 g/mL = 881 g/m; 10 kg and 10 % spare, 12.49 m, rounded up.
  await expectAnswer(page, SOAK, /^12\.5\sm$/);
}

const findings = (page: Page) => page.locator('.finding').allTextContents();

describe('casings from nothing', () => {
  it('by the keyboard alone at 320 px, metres and links, kept over a reload', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    await tabTo(page, 'To fill');
    await page.keyboard.type('10');
    await tabTo(page, 'Width once stuffed');
    await page.keyboard.type('33');
    await tabTo(page, 'How full');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('100');
    await tabTo(page, 'Weight of a link');
    await page.keyboard.type('120');
    // Derived: as above; 10 000 ÷ 120 is 83 links and 40 g.
    await expectAnswer(page, SOAK, /^12\.5\sm$/);
    await expectAnswer(page, 'Links', /^83 links$/);
    await expectAnswer(page, 'Each link', /^120\sg, 136\smm$/);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectAnswer(page, 'Links', /^83 links$/);
    expect(visit.problems).toEqual([]);
  });

  it('takes the usual width of the casing, and says that the label is not it', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await hog(page);
    await expect.poll(() => findings(page)).toContainEqual(expect.stringMatching(/taken as 33\smm/));
    expect(await findings(page)).toContainEqual(expect.stringMatching(/gut of pig/));
    await field(page, 'Width once stuffed').fill('45');
    await expect
      .poll(() => findings(page))
      .toContainEqual(expect.stringMatching(/32\smm to 35\smm, not 45\smm/));
    // Derived: (45 ÷ 30)².
    await expectAnswer(page, 'Time to heat, against one of 30 mm', /^about 2\.3 times$/);
  });

  it('has no default answer: without a weight or a width nothing is told', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await hog(page);
    await field(page, 'To fill').fill('');
    await expectAnswer(page, SOAK, /Cannot tell/);
    await expect
      .poll(() => page.getByText(/Still needed for the metres/).textContent())
      .toMatch(/what is to be filled/);
    await expectNoBrokenNumber(page);
  });

  it('counts strands and bundles whole, links by length, and weighs ten', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await hog(page);
    await field(page, 'One strand').fill('2');
    // Derived: 12.49 m of strands of 2 m.
    await expect.poll(() => page.getByText('7 strands', { exact: true }).count()).toBeGreaterThan(0);
    await field(page, 'Link 1').fill('130');
    await field(page, 'Link 2').fill('134');
    await expectAnswer(page, 'Links as weighed', /^132\sg on average of 2, 10\.0\s% over$/);
    await expect.poll(() => findings(page)).toContainEqual(expect.stringMatching(/120\sg was wanted/));
    await page.getByLabel('A link is told').selectOption('length');
    await field(page, 'Length of a link').fill('150');
    // Derived: 0.15 m × 881 g/m.
    await expectAnswer(page, 'Each link', /^132\sg, 150\smm$/);
  });

  it('reads kilograms however they are spelt', async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await hog(page);
    await field(page, 'To fill').fill('5 kgs');
    // Derived: half of 12.49 m, rounded up.
    await expectAnswer(page, SOAK, /^6\.3\sm$/);
  });

  it('odd texts as the weight are kept and never computed with', { timeout: ODD_TIMEOUT_MS }, async () => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await hog(page);
    await expectOddTextsKept(page, field(page, 'To fill'), {
      answers: SOAK,
      texts: ODD_TEXTS.filter((odd) => odd !== '5 kgs'),
    });
  });

  it('breaks no accessibility rule and fits a phone', async () => {
    await using visit = await openPage(PATH, { width: 320, height: 640, phone: true });
    const { page } = visit;
    await hog(page);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });
});

describe('on paper', () => {
  it.each(['A4', 'Letter'] as const)('%s: one card with every input and its flag', async (format) => {
    await using visit = await openPage(PATH);
    const { page } = visit;
    await hog(page);
    await field(page, 'Link 2').fill('134');
    await page.getByLabel('Paper', { exact: true }).selectOption(format === 'A4' ? 'a4' : 'letter');
    const pages = await readPdf(await pdfOf(page, { format }));
    expect(pages).toHaveLength(1);
    await expectPrintable(page, pages, format);
    const text = pages[0]?.text ?? '';
    for (const wanted of [
      /Hog 32–35/,
      /10 ?kg ?E/,
      /33 ?mm ?D/,
      /1\.03 ?g\/mL ?D/,
      /100 ?% ?E/,
      /12\.5 ?m ?W/,
      /120 ?g ?E/,
      /83 links ?W/,
      /134 ?g ?E/,
      /flush with water/,
      /common practice, no source/,
      /calc \d/,
      /it validates no process/,
    ]) {
      expect(text).toMatch(wanted);
    }
    expect(visit.problems).toEqual([]);
  });

  it('is an empty form where no script runs', async () => {
    await using visit = await openPage(PATH, { javaScript: false });
    const pages = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toMatch(/Soak list/);
    expect(pages[0]?.text).toMatch(/it validates no process/);
  });
});

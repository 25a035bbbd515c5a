import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './browser.ts';
import { expectPrintable, type PrintedPage, pdfOf, readPdf } from './pdf.ts';

const PAPERS = [
  { format: 'A4', blank: '#blank', choice: 'a4' },
  { format: 'Letter', blank: '#blank-letter', choice: 'letter' },
] as const;

async function print(page: Page, format: 'A4' | 'Letter'): Promise<PrintedPage[]> {
  const pages = await readPdf(await pdfOf(page, { format }));
  await expectPrintable(page, pages, format);
  return pages;
}

/** Two cards have more blocks than a page: the needles of a brine take a page of their own. */
const TWO_PAGES = ['/worksheets/batch-sheet/', '/worksheets/brine/'];

/** What a form of that address lacks, in words. */
async function faultsOf(page: Page, path: string): Promise<string[]> {
  const faults: string[] = [];
  for (const { format, blank } of PAPERS) {
    await page.goto(`${path}${blank}`);
    const pages = await print(page, format).catch((error: unknown) => String(error).slice(0, 600));
    const fault =
      typeof pages === 'string'
        ? pages
        : pages.length !== (TWO_PAGES.includes(path) ? 2 : 1)
          ? `${pages.length} pages`
          : pages.some(({ text }) => /PASS|FAIL|NaN|undefined/.test(text))
            ? 'judged'
            : null;
    if (fault !== null) faults.push(`${path} on ${format}: ${fault}`);
  }
  return faults;
}

describe('a blank form', () => {
  it('of every sheet, record and card is there to write on, on both papers, without any script', async () => {
    await using visit = await openPage('/forms/', { javaScript: false });
    const links = await visit.page
      .locator('main a[href$="#blank"]')
      .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).pathname));
    const forms = [...new Set(links)].filter((path) => path !== '/learn/');
    expect(forms.length).toBeGreaterThan(20);
    const faults = await Promise.all(
      [0, 1].map(async (half) => {
        const page = await visit.context.newPage();
        const found: string[] = [];
        for (const path of forms.filter((_, at) => at % 2 === half))
          found.push(...(await faultsOf(page, path)));
        return found;
      }),
    );
    expect(faults.flat()).toEqual([]);
    expect(visit.problems).toEqual([]);
  }, 60_000);

  it('stays empty with a batch on the bench, and the way back fills it', async () => {
    await using visit = await openPage('/forms/plan/#demo=country-terrine');
    const { page } = visit;
    await page.locator('.sheet').getByText('156 mg/kg').waitFor();
    await page.waitForTimeout(700);
    await page.goto('/forms/#main');
    await page.getByRole('link', { name: 'Plan of hazards and control points, blank on A4' }).click();
    await page.getByText('Blank form, A4').waitFor();
    expect(await page.locator('.sheet').textContent()).not.toMatch(/20260310-A|156/);
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    await page.getByRole('link', { name: 'Back to the filled form' }).first().click();
    await page.getByText('20260310-A').first().waitFor();
    expect(visit.problems).toEqual([]);
  });
});

describe.each(PAPERS)('on $format', ({ format, choice }) => {
  it('log and plan of a batch are one page each, with its own limits and what its readings say', async () => {
    await using visit = await openPage('/forms/cook-and-cooling-log/#demo=pate-en-croute-cooling-fails');
    const { page } = visit;
    await page.getByText('47 readings kept').first().waitFor();
    await page.getByLabel('Paper', { exact: true }).selectOption(choice);
    const log = await print(page, format);
    expect(log).toHaveLength(1);
    // The limits of the demo's rules: 165 °F instantly; 135 to 70 °F in 2 h (FDA Food Code 2022, 3-401.11, 3-501.14).
    expect(log[0]?.text).toMatch(/165 °F \(74 °C\).*135 °F \(57 °C\) → 70 °F \(21 °C\) in 2 h/);
    expect(log[0]?.text).toMatch(/STOP FAIL, hold/);
    expect(log[0]?.text).toContain('DISCARD');
    const drawn = await page.locator('.sheet-curve-line').getAttribute('d');
    expect(drawn?.match(/[ML]/g)?.length).toBeGreaterThan(40);

    await page.goto('/forms/plan/#demo=country-terrine');
    await page.locator('.sheet').getByText('156 mg/kg').waitFor();
    const [plan, ...more] = await print(page, format);
    expect(more).toEqual([]);
    expect(plan?.text).toContain('Not an approved plan');
    // 156 mg/kg of nitrite in comminuted products: 9 CFR 424.21(c).
    expect(plan?.text).toMatch(/156 mg\/kg as sodium nitrite/);
    expect(plan?.text).toMatch(/135 °F \(57 °C\) → 41 °F \(5 °C\) in 6 h/);
    expect(plan?.text).toMatch(/annual edition of 2015; checked [\d-]+; confirmed/);

    await page.goto('/forms/cook-and-cooling-log/#demo=mutton-ham');
    await page.locator('.sheet-curve-line').waitFor();
    expect(await print(page, format)).toHaveLength(1);
    expect(visit.problems).toEqual([]);
  });
});

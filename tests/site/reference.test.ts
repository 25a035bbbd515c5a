import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { readCollection } from '../content/read-content.ts';
import { awake, field, saved } from './bench.ts';
import { openPage } from './browser.ts';
import { fileOf } from './pages.ts';
import { pdfOf, readPdf, smallestTypePt } from './pdf.ts';

/** Budgets of a page without a worksheet, bytes over the wire. House rules. */
const PLAIN_TOTAL = 20_000;
const PLAIN_JS = 1_500;
const PLAIN_REQUESTS = 6;
/** Smallest type on paper, pt. House rule. */
const SMALLEST_PT = 9;

const tables = readCollection('tables').map(({ id }) => `/tables/${id}/`);

describe.each([...tables, '/glossary/', '/learn/', '/demos/', '/defects/'])('the weight of %s', (path) => {
  it('keeps the budget of a page without a worksheet', async () => {
    await using visit = await openPage('/404.html');
    const asked = new Set(['/mark.svg']);
    visit.page.on('request', (request) => asked.add(new URL(request.url()).pathname));
    await visit.page.goto(path, { waitUntil: 'networkidle' });
    const weigh = (paths: string[]) =>
      paths.reduce((sum, one) => sum + gzipSync(readFileSync(fileOf(one)), { level: 9 }).length, 0);
    expect(asked.size).toBeLessThanOrEqual(PLAIN_REQUESTS);
    expect(weigh([...asked].filter((file) => file.endsWith('.js')))).toBeLessThanOrEqual(PLAIN_JS);
    expect(weigh([...asked])).toBeLessThanOrEqual(PLAIN_TOTAL);
    expect(visit.problems).toEqual([]);
  });
});

describe('a table', () => {
  it('shows one rule set when asked, and all again when a row of another is linked to', async () => {
    await using visit = await openPage('/tables/cooling-windows/');
    const { page } = visit;
    const shown = () => page.locator('.rule-set:visible').count();
    const all = await shown();
    await page.getByLabel('Rule set').selectOption('fr-catering');
    expect(await shown()).toBe(1);
    await page.evaluate(() => {
      location.hash = 'us-food-code-135F-70F';
    });
    await expect.poll(shown).toBe(all);
  });

  it('shows one scale when asked', async () => {
    await using visit = await openPage('/tables/temperatures/');
    const { page } = visit;
    await page.getByLabel('Temperatures').selectOption('c');
    expect(await page.locator('.tf:visible').count()).toBe(0);
    expect(await page.locator('.tc:visible').count()).toBeGreaterThan(20);
    await page.getByLabel('Temperatures').selectOption('f');
    expect(await page.locator('.tc:visible').count()).toBe(0);
  });

  it('shows every row on both scales without JavaScript, and no dead tool', async () => {
    await using visit = await openPage('/tables/cooling-windows/', { javaScript: false });
    const { page } = visit;
    expect(await page.locator('.table-tools').isVisible()).toBe(false);
    expect(await page.locator('.rule-set:visible').count()).toBe(await page.locator('.rule-set').count());
    expect(await page.locator('.tf:visible').count()).toBe(await page.locator('.tf').count());
  });

  it('says of every row how it is known: beside it, or once for all of a part', async () => {
    await using visit = await openPage('/tables/brine-strength/', { javaScript: false });
    const unmarked = await visit.page.locator('.rule-set').evaluateAll((parts) =>
      parts.flatMap((part) => {
        const forAll = [...part.querySelectorAll('.reviewed')].some((line) =>
          /^\s*Every row:/.test(line.textContent),
        );
        const rows = [...part.querySelectorAll('tbody tr')];
        return forAll ? [] : rows.filter((row) => !row.querySelector('.mark')).map((row) => row.id);
      }),
    );
    expect(unmarked).toEqual([]);
  });

  it.each(['/tables/nitrite-limits/', '/tables/cooking-lethality/', '/tables/seasoning/'])(
    '%s prints every part on one sheet, in type that can be read from the wall',
    async (path) => {
      await using visit = await openPage(path);
      const parts = await visit.page.locator('.rule-set').evaluateAll((all) =>
        all.map((part) => {
          const rows = [...(part.querySelector('table')?.rows ?? [])];
          return [part.firstElementChild?.textContent ?? '', rows.at(-1)?.cells[0]?.textContent ?? ''];
        }),
      );
      // Blanks between boxes are the page's, not the text's.
      const plain = (text = '') => text.replace(/\s+/g, '');
      const pages = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
      for (const [title, last] of parts) {
        const sheet = pages.find(({ text }) => plain(text).includes(plain(title)));
        expect(plain(sheet?.text).split(plain(title))[1]).toContain(plain(last));
      }
      for (const page of pages)
        expect(smallestTypePt(page) ?? SMALLEST_PT).toBeGreaterThanOrEqual(SMALLEST_PT - 0.05);
      // Short parts share a sheet; beside the parts there are cautions before and sources after.
      expect(pages.length).toBeLessThanOrEqual(parts.length + 2);
    },
  );
});

describe('a card for the wall', () => {
  /** What a sheet leaves between margins of 10 and 14 mm: the width of A4 and the height of Letter, the lesser ones. */
  const SHEET_MM = { width: 210 - 28, height: 279.4 - 20 };
  const px = (mm: number) => Math.floor((mm * 96) / 25.4);

  it('fits on one sheet in every table', async () => {
    await using visit = await openPage('/404.html', { width: px(SHEET_MM.width) });
    const { page } = visit;
    await page.emulateMedia({ media: 'print' });
    const cards = [];
    for (const path of tables) {
      await page.goto(path);
      const ofPage = await page.locator('.rule-set').evaluateAll((parts) =>
        parts.flatMap((part) => {
          const name = part.firstElementChild?.textContent ?? '';
          const whole = getComputedStyle(part).breakInside;
          let top = part.getBoundingClientRect().top;
          // A part of several tables is as many cards, the first with the head of the part.
          return [...part.querySelectorAll('.scroll')].map((table, at, all) => {
            const { bottom, right } = table.getBoundingClientRect();
            const end = at === all.length - 1 ? part.getBoundingClientRect().bottom : bottom;
            const height = end - top;
            top = end;
            return { name, whole, height, right: Math.max(right, table.scrollWidth) };
          });
        }),
      );
      expect(ofPage).not.toEqual([]);
      cards.push(...ofPage.map((card) => ({ path, ...card })));
    }
    expect(new Set(cards.map(({ path }) => path)).size).toBe(tables.length);
    expect(
      cards.filter(
        ({ whole, height, right }) =>
          whole !== 'avoid' || height > px(SHEET_MM.height) || right > px(SHEET_MM.width) + 1,
      ),
    ).toEqual([]);
    expect(visit.problems).toEqual([]);
  });
});

describe('the defects', () => {
  it('are found by place and by sense', async () => {
    await using visit = await openPage('/defects/');
    const { page } = visit;
    await page.getByLabel('Where is it?').selectOption('jelly');
    expect(await page.locator('.place:visible').count()).toBe(1);
    await page.getByLabel('How do you know?').selectOption('smell');
    expect(await page.locator('.place:visible').count()).toBe(0);
    await page.getByLabel('Where is it?').selectOption('');
    await page.getByLabel('How do you know?').selectOption('smell');
    const first = page.locator('.place:visible [data-senses]:visible').first();
    expect(await first.getAttribute('data-safety')).toBe('S');
  });

  it('stand open without JavaScript', async () => {
    await using visit = await openPage('/defects/', { javaScript: false });
    expect(await visit.page.locator('[data-senses]:visible').count()).toBe(
      await visit.page.locator('[data-senses]').count(),
    );
  });
});

describe('the learning path', () => {
  it('keeps a tick on the device, and puts cleared ticks back', async () => {
    await using visit = await openPage('/learn/');
    const { page } = visit;
    await page.locator('.tick input').nth(3).check();
    await page.reload();
    expect(await page.locator('.tick input').nth(3).isChecked()).toBe(true);
    expect(await page.locator('#practised').textContent()).toContain('1 of 36');
    await page.locator('#clear-record').click();
    expect(await page.locator('.tick input:checked').count()).toBe(0);
    await page.getByRole('button', { name: 'Put them back' }).click();
    expect(await page.locator('.tick input:checked').count()).toBe(1);
    expect(visit.problems).toEqual([]);
  });

  it('works where storage is refused or damaged', async () => {
    await using visit = await openPage('/404.html');
    const { page } = visit;
    await page.evaluate(() => localStorage.setItem('practised', '[1, {"x": 2}'));
    await page.goto('/learn/');
    expect(await page.locator('#practised').textContent()).toContain('0 of 36');
    expect(visit.problems).toEqual([]);
  });

  it('prints its record on one page, black, with a box for each signature', async () => {
    await using visit = await openPage('/learn/');
    await visit.page.locator('.tick input').first().check();
    for (const format of ['A4', 'Letter'] as const) {
      const pages = await readPdf(await pdfOf(visit.page, { format }));
      expect(pages).toHaveLength(1);
      const [record] = pages;
      expect(record && smallestTypePt(record)).toBeGreaterThanOrEqual(SMALLEST_PT - 0.05);
      expect(record?.texts.filter(({ text }) => text.trim() === 'Trainer')).toHaveLength(37);
      expect(record?.text).toMatch(/\b\d{4}-\d\d-\d\d\b/);
    }
    // The blank one for a new learner keeps the ticks and prints none of their days.
    await visit.page.goto('/learn/#blank');
    await visit.page.reload();
    expect(await visit.page.locator('.tick input').first().isChecked()).toBe(true);
    const [blank, ...more] = await readPdf(await pdfOf(visit.page, { format: 'A4' }));
    expect(more).toEqual([]);
    expect(blank?.text).not.toMatch(/\b\d{4}-\d\d-\d\d\b/);
  });
});

it('an example batch is changed, stays changed, and is put back as it was', async () => {
  await using visit = await openPage('/demos/');
  const { page } = visit;
  await page.locator('a[href*="#demo=country-terrine"]').click();
  await awake(page);
  const state = async () => {
    await page.locator('.verdict').first().waitFor();
    return page.locator('main input').evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
  };
  const mass = field(page, 'Finished mass, all moulds, after chilling');
  await expect.poll(() => mass.inputValue()).not.toBe('');
  const [before, was] = [await state(), await mass.inputValue()];
  await mass.fill('3400');
  await saved(page);
  await page.goto('/demos/');
  await page.locator('a[href*="#demo=country-terrine"]').click();
  await expect.poll(() => mass.inputValue()).toBe('3400');
  await page.getByRole('button', { name: 'Put the demo back as it was' }).click();
  await expect.poll(() => mass.inputValue()).toBe(was);
  await saved(page);
  await page.reload();
  await expect.poll(() => mass.inputValue()).toBe(was);
  expect(await state()).toEqual(before);
  expect(visit.problems).toEqual([]);
});

it('every example batch opens from its page', async () => {
  await using visit = await openPage('/demos/');
  const links = await visit.page
    .locator('a[href*="#demo="]')
    .evaluateAll((all) => all.map((a) => a.getAttribute('href') ?? ''));
  expect(links).toHaveLength(5);
  for (const href of links) {
    await visit.page.goto(href, { waitUntil: 'networkidle' });
    await visit.page.reload({ waitUntil: 'networkidle' });
  }
  expect(visit.problems).toEqual([]);
});

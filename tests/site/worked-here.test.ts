import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { awake, expectAnswer, field, saved } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { fileOf, sitePaths } from './pages.ts';
import { pdfOf, readPdf } from './pdf.ts';

const CURING = '/technique/curing-salts/';
const TERRINE = '/technique/country-terrine/';
const BENCH = '/worksheets/salt-and-cure/';
const PLAIN_REQUESTS = 6;

const fold = (page: Page, worksheet: string) => page.locator(`.worked-here[data-worksheet="${worksheet}"]`);

/** Comes to the worksheet that opens by itself and waits until it has its example. */
async function reach(page: Page): Promise<void> {
  await page.locator('.worked-here[open]').scrollIntoViewIfNeeded();
  await page.locator('.worksheet[data-life="open"]').waitFor();
}

/** Everything kept on the device, as text. */
function kept(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const names = await indexedDB.databases();
    if (!names.some(({ name }) => name === 'larderwright')) return 'nothing';
    const db = await new Promise<IDBDatabase>((done, fail) => {
      const asked = indexedDB.open('larderwright');
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => fail(asked.error);
    });
    const all = (store: string, what: 'getAll' | 'getAllKeys') =>
      new Promise((done, fail) => {
        const asked = db.transaction(store).objectStore(store)[what]();
        asked.onsuccess = () => done(asked.result);
        asked.onerror = () => fail(asked.error);
      });
    const text = JSON.stringify({
      batches: await all('batches', 'getAll'),
      aside: await all('aside', 'getAll'),
      desk: [await all('desk', 'getAllKeys'), await all('desk', 'getAll')],
    });
    db.close();
    return text;
  });
}

interface Kept {
  batches: { id: string; demo: boolean; cure: { nitriteTarget: { text: string } } }[];
  desk: [string[], string[]];
}

describe('a worksheet within its technique page', () => {
  it('opens on the example of the page and computes it', async () => {
    await using visit = await openPage(CURING);
    const { page } = visit;
    await reach(page);
    // Derived: 120 mg/kg × 2.800 kg ÷ 62.5 mg/g = 5.376 g.
    await expectAnswer(page, 'Curing salt for the nitrite wanted', /^Weigh 5\.4 g$/);
    expect(await page.locator('.worksheet-example').textContent()).toMatch(
      /Example of this page: change anything, nothing is kept\..*DEMO, invented/,
    );
    expect(visit.problems).toEqual([]);
  });

  it('computes anew at every change, and is put back by one press', async () => {
    await using visit = await openPage('/technique/moulds-lining-filling/');
    const { page } = visit;
    await reach(page);
    const first = page.locator('.mould').first();
    const fill = first.locator('.answer', { hasText: 'Fill each mould with' }).locator('.answer-value');
    // Derived: 290 × 95 × (75 − 10) mm at 1.04 g/mL, by the water 2066 of 2066.25 g: 1862 g.
    await expect.poll(() => fill.textContent()).toMatch(/1862\sg/);
    await field(first, 'Headspace').fill('20');
    await expect.poll(() => fill.textContent()).not.toMatch(/1862\sg/);
    await page.getByRole('button', { name: 'Put the example back' }).click();
    await expect.poll(() => fill.textContent()).toMatch(/1862\sg/);
    expect(await field(first, 'Headspace').inputValue()).toBe('10');
  });

  it('leaves a device with nothing on it as it was', async () => {
    await using visit = await openPage(CURING);
    const { page } = visit;
    await reach(page);
    await field(page, 'Nitrite wanted, as sodium nitrite').fill('130');
    // Derived: 130 mg/kg × 2.800 kg ÷ 62.5 mg/g = 5.824 g.
    await expectAnswer(page, 'Curing salt for the nitrite wanted', /^Weigh 5\.8 g$/);
    await saved(page);
    expect(await kept(page)).toBe('nothing');
  });

  it('never touches the batch on the bench, and lays a copy there only when asked', async () => {
    await using visit = await openPage(`${BENCH}#demo=country-terrine`);
    const { page } = visit;
    await page.locator('.verdict').first().waitFor();
    await field(page, 'Nitrite wanted, as sodium nitrite').fill('110');
    await saved(page);
    const before = await kept(page);
    expect(before).toContain('"text":"110"');

    await page.goto(CURING, { waitUntil: 'networkidle' });
    await reach(page);
    await field(page, 'Nitrite wanted, as sodium nitrite').fill('90');
    await saved(page);
    expect(await kept(page)).toBe(before);

    await page.getByRole('button', { name: 'Take it to my bench' }).click();
    const onward = page.getByRole('link', { name: 'Go on with the copy in Salt and cure' });
    await onward.waitFor();
    const after: Kept = JSON.parse(await kept(page));
    const [bench] = (JSON.parse(before) as Kept).batches;
    const copy = after.batches.find(({ id }) => id !== bench?.id);
    expect(after.batches).toHaveLength(2);
    expect(after.batches).toContainEqual(bench);
    expect(copy).toMatchObject({ demo: false, cure: { nitriteTarget: { text: '90' } } });
    expect(copy?.id).not.toContain('example');
    const desk = Object.fromEntries(after.desk[0].map((key, at) => [key, after.desk[1][at]]));
    expect(desk.current).toBe(copy?.id);
    // Beside it lies only the day the backup was looked at.
    expect(Object.keys(desk).filter((key) => !['current', 'backupLookedOn'].includes(key))).toEqual([]);

    // What is typed here afterwards is the example's again.
    await field(page, 'Nitrite wanted, as sodium nitrite').fill('70');
    await saved(page);
    expect(JSON.parse(await kept(page))).toEqual(after);

    await onward.click();
    await awake(page);
    await expect.poll(() => field(page, 'Nitrite wanted, as sodium nitrite').inputValue()).toBe('90');
    expect(await page.locator('.worksheet').textContent()).not.toContain('DEMO');
    expect(visit.problems).toEqual([]);
  });

  it('shares one example with the others of the page, one of them open at a time', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await reach(page);
    const amount = page.locator('.mix-line', { has: page.locator('.cure-strength') });
    await field(amount, 'Amount').fill('7.7');
    await fold(page, 'salt-and-cure').locator('summary').click();
    await expect.poll(() => field(page, 'In the formula').inputValue()).toBe('7.7');
    expect(await page.locator('.worksheet').count()).toBe(1);
    await fold(page, 'batch-formula').locator('summary').click();
    await expect.poll(() => field(amount, 'Amount').inputValue()).toBe('7.7');
    expect(await page.locator('.worksheet').count()).toBe(1);
    expect(visit.problems).toEqual([]);
  });

  it('stands in step however fast it is folded and unfolded', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await page.evaluate(async () => {
      const one = document.querySelector<HTMLDetailsElement>('.worked-here[data-worksheet="cook-log"]');
      one?.scrollIntoView();
      for (let times = 0; times < 7 && one; times += 1) {
        one.open = !one.open;
        await new Promise((done) => setTimeout(done, 15));
      }
    });
    await page.locator('.worksheet[data-life="open"]').waitFor();
    await page.waitForTimeout(500);
    expect(await page.locator('.worksheet').count()).toBe(1);
    expect(await fold(page, 'cook-log').locator('.worksheet').count()).toBe(1);
    expect(visit.problems).toEqual([]);
  });

  it('says so when the example does not come, and takes no typing', async () => {
    await using visit = await openPage(CURING);
    const { page } = visit;
    await page.route('**/example.json', (route) => route.abort());
    await page.locator('.worked-here[open]').scrollIntoViewIfNeeded();
    await page.getByText('The example of this page could not be fetched.').waitFor();
    expect(await field(page, 'Nitrite wanted, as sodium nitrite').getAttribute('readonly')).not.toBeNull();
  });

  it('says so when the worksheet does not come', async () => {
    await using visit = await openPage(CURING);
    const { page } = visit;
    await page.route('**/worksheets/links.json', (route) => route.abort());
    await page.locator('.worked-here[open]').scrollIntoViewIfNeeded();
    await page.getByText('It could not be opened here.').waitFor();
    expect(await page.locator('.worksheet-here .press').first().isVisible()).toBe(true);
  });
});

describe('without JavaScript', () => {
  it('the link stands alone', async () => {
    await using visit = await openPage(CURING, { javaScript: false });
    const { page } = visit;
    expect(await page.locator('.worked-here').isVisible()).toBe(false);
    expect(await page.locator('.worksheet-here .press').isVisible()).toBe(true);
    expect(await page.locator('.worksheet-here .carries').isVisible()).toBe(true);
  });
});

describe('on paper', () => {
  it('the page prints whole with the link, and no invented number', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await reach(page);
    await fold(page, 'batch-sheet').locator('summary').click();
    await page.getByText('DEMO, invented: not a real batch').first().waitFor();
    const text = (await readPdf(await pdfOf(page, { format: 'A4' }))).map((sheet) => sheet.text).join(' ');
    expect(text).toContain('Method');
    expect(text).toContain('Self-check');
    expect(text).toContain('Batch sheet');
    expect(text).not.toContain('Tarnwick');
    expect(text).not.toContain('DEMO');
    await expect.poll(() => page.locator('.sheet').count()).toBeGreaterThan(0);
    expect(visit.problems).toEqual([]);
  });

  it('a sheet that is asked for prints alone, marked as invented', async () => {
    await using visit = await openPage('/technique/unmould-slice-serve/');
    const { page } = visit;
    await page.evaluate(() => {
      window.print = () => {};
    });
    await reach(page);
    await page.getByText('DEMO, invented: not a real batch').first().waitFor();
    await page.getByRole('button', { name: 'Print the sheet' }).click();
    const sheets = await readPdf(await pdfOf(page, { format: 'A4' }));
    expect(sheets).toHaveLength(2);
    for (const { text } of sheets) {
      expect(text).toMatch(/^Batch sheet: .*DEMO, invented: not a real batch/);
      expect(text).not.toContain('Self-check');
    }
  });
});

/** Whether a worksheet shows an answer or a verdict that is more than a request for input. */
async function answersSoon(one: ReturnType<typeof fold>): Promise<boolean> {
  const answers = async () => {
    const texts = await one.locator('.answer-value, .verdict').allTextContents();
    return texts.some((text) => !/^\s*(?:Cannot tell|CANNOT TELL|Write|Nothing|None|No )/.test(text));
  };
  for (let tries = 0; tries < 40; tries += 1) {
    if (await answers()) return true;
    await new Promise((done) => setTimeout(done, 100));
  }
  return false;
}

const techniques = sitePaths().filter((path) => /^\/technique\/./.test(path));

/** Worksheets named on a page, in its order. */
const namedOn = (path: string) =>
  [...readFileSync(fileOf(path), 'utf8').matchAll(/data-worksheet="([a-z-]+)"/g)].map(([, id = '']) => id);

/** Where each worksheet is looked at through the eyes of the accessibility rules: on the first page that has it. */
const lookedAt = new Map(techniques.toReversed().flatMap((path) => namedOn(path).map((id) => [id, path])));

describe.concurrent.each(techniques)('%s', (path) => {
  it('weighs nothing before it is read, and every worksheet of it opens with an answer, clean on a phone', {
    timeout: 180_000,
  }, async () => {
    await using visit = await openPage('/404.html', { width: 320, height: 640, phone: true });
    const { page } = visit;
    const asked = new Set<string>();
    page.on('request', (request) => asked.add(new URL(request.url()).pathname));
    await page.goto(path, { waitUntil: 'networkidle' });
    expect([...asked].filter((file) => /WorkedHere|worksheets\/|example/.test(file))).toEqual([]);
    expect(new Set([...asked, '/mark.svg']).size).toBeLessThanOrEqual(PLAIN_REQUESTS);

    const ids = namedOn(path);
    expect(ids.length).toBeGreaterThan(0);
    const ownSideways = await sidewaysScrollPx(page);
    const faults: string[] = [];
    for (const id of ids) {
      const one = fold(page, id);
      if ((await one.getAttribute('open')) === null) await one.locator('summary').click();
      await one.scrollIntoViewIfNeeded();
      await one.locator('.worksheet[data-life="open"]').waitFor();
      await page.waitForLoadState('networkidle');
      if (!(await answersSoon(one))) faults.push(`${id}: opens on an example that gives no answer`);
      const twice = await page.evaluate(() => {
        const all = Array.from(document.querySelectorAll('[id]'), (element) => element.id);
        return all.filter((name, at) => all.indexOf(name) !== at);
      });
      faults.push(...twice.map((name) => `${id}: id ${name} stands twice`));
      const sideways = (await sidewaysScrollPx(page)) - ownSideways;
      if (sideways !== 0) faults.push(`${id}: ${sideways} px too wide`);
      if (lookedAt.get(id) !== path) continue;
      const broken = await accessibilityFaults(page, { within: '.worksheet-here' });
      faults.push(...broken.map((rule) => `${id}: ${rule}`));
    }
    expect({ faults, problems: visit.problems }).toEqual({ faults: [], problems: [] });
  });
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import {
  awake,
  expectAnswer,
  expectOddTextsKept,
  ODD_TEXTS,
  ODD_TIMEOUT_MS,
  paste,
  saved,
  tabTo,
} from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';

const PATH = '/worksheets/cook-log/';
const TERRINE = `${PATH}#demo=country-terrine`;
const PIE = `${PATH}#demo=pate-en-croute-cooling-fails`;

/** Waits as long as a busy machine may need to fetch a part of the page. */
function soon<T>(look: () => T | Promise<T>, timeout = 10_000) {
  return expect.poll(look, { timeout });
}

/** What stands large above the readings. */
async function expectStand(page: Page, wanted: RegExp): Promise<void> {
  await soon(() => page.locator('.stand').textContent()).toMatch(wanted);
}

/** Opens an empty cook log on a morning at 10:05 in London. */
async function openBlank(width = 1280) {
  const visit = await openPage('/404.html', { width, height: 640, timezone: 'Europe/London' });
  await visit.page.clock.setFixedTime(new Date('2026-03-10T10:05:00Z'));
  await visit.page.goto(PATH, { waitUntil: 'networkidle' });
  await awake(visit.page);
  visit.problems.length = 0;
  return visit;
}

/** Names rule, limit and probe: UK advice, 70 °C for 2 min, probe checked to ± 0.5 °C. */
async function plan(page: Page, error = '0.5'): Promise<void> {
  await page.getByLabel('Whose rule on cooking').selectOption('uk-advice');
  await page.getByLabel('The one limit the plan names').selectOption('uk-70C-2min');
  await page.getByLabel('Reads high (+) or low (−) by', { exact: true }).fill('0');
  if (error !== '') await page.getByLabel('Error, ±', { exact: true }).fill(error);
}

async function addReading(page: Page, clock: string, temperature: string): Promise<void> {
  await page.getByLabel('Time', { exact: true }).fill(clock);
  await page.getByLabel('Core', { exact: true }).fill(temperature);
  await page.keyboard.press('Enter');
}

describe('a cook from nothing', () => {
  it('by the keyboard alone at 320 px, to the end of the hold', async () => {
    await using visit = await openBlank(320);
    const { page } = visit;
    await tabTo(page, 'Whose rule on cooking');
    await page.keyboard.type('United Kingdom, advice');
    await page.getByLabel('The one limit the plan names').waitFor();
    await tabTo(page, 'The one limit the plan names');
    // FSA advice to caterers: 70 °C for 2 minutes.
    await page.keyboard.type('70');
    await tabTo(page, 'Reads high (+) or low (−) by');
    await page.keyboard.type('0');
    await tabTo(page, 'Error, ±');
    await page.keyboard.type('0.5');
    await tabTo(page, 'Time');
    await page.keyboard.type('1000');
    await page.keyboard.press('Tab');
    await page.keyboard.type('69.8');
    await page.keyboard.press('Enter');
    // Derived: 70 + 0.5 − 69.8.
    await expectStand(page, /CANNOT TELL.*keep cooking.*0\.7 °C below 70\.5 °C/s);
    // The hand is back in the field it began with.
    await page.keyboard.type('10:01');
    await page.keyboard.press('Tab');
    await page.keyboard.type('70.6');
    await page.keyboard.press('Enter');
    // Derived: 10:01 and 2 min.
    await expectStand(
      page,
      /Limit not complete: keep the probe in, do not chill\.\s*Hold until 10:03, 2 min more/,
    );
    await page.keyboard.type('1003');
    await page.keyboard.press('Tab');
    await page.keyboard.type('70,9');
    await page.keyboard.press('Enter');
    await expectStand(page, /PASS.*Limit complete.*from 10:01 to 10:03: 2 min/s);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await saved(page);
    await page.reload();
    await expectStand(page, /PASS.*Limit complete/s);
    expect(visit.problems).toEqual([]);
  });

  it('takes the present moment when no time is written, and goes on in the temperature field', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await page.getByLabel('Core', { exact: true }).fill('42.5');
    await page.keyboard.press('Enter');
    await soon(() => page.locator('.quick-entry-said').textContent()).toMatch(
      /42\.5 °C at 10:05, Tue 10 Mar/,
    );
    expect(
      await page.evaluate(() => document.activeElement?.closest('[data-entry]')?.getAttribute('data-entry')),
    ).toBe('temperature');
  });

  it('takes a late time of yesterday just after midnight', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await page.clock.setFixedTime(new Date('2026-03-11T00:10:00Z'));
    await addReading(page, '2350', '61.0');
    await soon(() => page.locator('.quick-entry-said').textContent()).toMatch(/at 23:50, Tue 10 Mar/);
    expect(await page.locator('.reading-says').first().textContent()).toMatch(
      /Written late: typed Wed 11 Mar, 00:10, 20 min/,
    );
  });

  it('shows the time of entry only when it is over 15 minutes from the reading', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await addReading(page, '0950', '60.0');
    await addReading(page, '0949', '59.5');
    // House rule: both times are shown when they are more than 15 min apart.
    await soon(() => page.locator('.reading-says').allTextContents()).toEqual([
      expect.stringMatching(/Written late: typed Tue 10 Mar, 10:05, 16 min/),
      expect.not.stringMatching(/late/),
    ]);
  });

  it('cannot tell without the probe’s error, and says so plainly', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await plan(page, '');
    for (const clock of ['1000', '1002', '1004']) await addReading(page, clock, '74');
    await expectStand(page, /CANNOT TELL.*error is not entered/s);
    expect(await page.locator('.limit').textContent()).toMatch(
      /Cannot tell: the probe’s error is not entered/,
    );
    await page.getByLabel('Error, ±', { exact: true }).fill('0');
    await expectStand(page, /PASS/);
  });

  it('shows the curve with its limit, its action line and the hold, and the same in words', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await plan(page);
    for (const [clock, core] of [
      ['0930', '52.1'],
      ['0945', '64.0'],
      ['1000', '70.8'],
      ['1002', '71.0'],
    ] as const) {
      await addReading(page, clock, core);
    }
    const chart = page.locator('.curve-figure');
    await soon(() => chart.locator('svg').textContent()).toMatch(/held 2 min/);
    expect(await chart.locator('figcaption').textContent()).toMatch(
      /4 readings from 52\.1 °C at 09:30 to 71\.0 °C at 10:02/,
    );
    expect(await chart.locator('svg').textContent()).toMatch(/limit 70\s°C \(158\s°F\).*act at 70\.5\s°C/s);
    await chart.getByText('The same as a table').click();
    await soon(() => chart.locator('tbody tr').count()).toBe(4);
    expect(await page.locator('.worksheet [style]').count()).toBe(0);
  });
});

describe('the one named limit', () => {
  it('offers only what may judge the batch, and says why the rest may not', async () => {
    await using visit = await openPage(PIE);
    const { page } = visit;
    const limit = page.getByLabel('The one limit the plan names');
    await limit.waitFor();
    // FDA Food Code 2022, 3-401.11: food with poultry takes 165 °F (74 °C).
    expect(await limit.locator('option').allTextContents()).toEqual([
      'Not chosen',
      expect.stringMatching(/165\s°F \(74\s°C\)/),
    ]);
    expect(await page.locator('.limits-off').first().textContent()).toMatch(
      /not offered.*food without poultry, and the formula holds chicken/s,
    );
  });

  it('is chosen again when the rule set changes', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await expectStand(page, /PASS/);
    await page.getByLabel('Whose rule on cooking').selectOption('uk-advice');
    await expectStand(page, /CANNOT TELL.*does not name its limit/s);
  });
});

describe('the invented terrine', () => {
  it('passes on readings alone, completed by carry-over', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    // Invented log: 71.9 °C at 11:20 to 72.5 °C at 11:45 against 71 + 0.5 °C held 20 min.
    await expectStand(page, /PASS.*from 11:20 to 11:45: 25 min/s);
    await expectAnswer(page, 'Counted on readings', /25 min/);
    // Derived: straight lines cross 71.5 °C at 11:18:11 and 11:46:45, 28.6 min, shown rounded down.
    await expectAnswer(page, 'By straight lines between readings (information)', /28 min/);
    expect(await page.locator('.finding-list').textContent()).toMatch(
      /completed after heating, by carry-over/,
    );
    expect(visit.problems).toEqual([]);
  });

  it('does not pass without the carry-over: an excluded reading stays, with reason and initials', async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await expectStand(page, /PASS/);
    await page.getByRole('button', { name: 'Earlier' }).click();
    const row = page.locator('.reading', {
      has: page.getByText('Exclude, or change the day of the reading of 11:30'),
    });
    await row.locator('summary').click();
    await row.getByRole('button', { name: 'Exclude it' }).click();
    expect(await row.textContent()).toMatch(/without a reason it stays in the count/);
    await row.getByLabel('Why it does not show the core').fill('probe slipped');
    await row.getByLabel('Initials', { exact: true }).fill('TW');
    await row.getByRole('button', { name: 'Exclude it' }).click();
    // Derived: 11:20 and 11:45 are 25 min apart, over the 15 min that one run may bridge.
    await expectStand(page, /CANNOT TELL/);
    const excluded = page.locator('.reading[data-excluded]');
    expect(await excluded.textContent()).toMatch(/EXCLUDED by TW .*probe slipped/s);
    await soon(() => page.locator('.curve-mark[data-mark="excluded"]').count()).toBe(1);
    await excluded.getByRole('button', { name: 'Count the reading of 11:30 again' }).click();
    await expectStand(page, /PASS/);
  });

  it('counts with the worst of two probes', async () => {
    await using visit = await openPage(TERRINE, { timezone: 'Europe/London' });
    const { page } = visit;
    await expectStand(page, /PASS/);
    await page.getByRole('button', { name: 'Add another probe' }).click();
    await expectStand(page, /CANNOT TELL/);
    await page.getByLabel('Writing for probe').selectOption({ index: 1 });
    await page.getByText('Read on another day').click();
    await page.getByLabel(/^Day of the reading/).fill('2026-03-10');
    await addReading(page, '1120', '68.0');
    await soon(() => page.locator('.quick-entry-said').textContent()).toMatch(
      /Added to Probe 2: 68\.0 °C at 11:20/,
    );
    await expectStand(page, /FAIL.*Probe 2/s);
    expect(await page.locator('.curve-series').count()).toBe(2);
  });
});

describe('a log that is pasted or loaded', () => {
  const NIGHT = '23:40 55.0\n23:50 66.1\n00:00 70.6\n00:10 71.2\n00:20 ERR';

  it('is shown as understood before it is taken, over midnight and with what cannot be read', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await plan(page);
    await page.getByText('Paste a log, or load a logger').click();
    await page.getByLabel('One reading a line').fill(NIGHT);
    await soon(() => page.locator('.import').textContent()).toMatch(/Choose the day of its first reading/);
    await page.getByLabel('Day of the first reading').fill('2026-03-09');
    await soon(() => page.locator('.import').textContent()).toMatch(/does not say whether it is in °C or °F/);
    await page.getByLabel('Scale').selectOption('C');
    const preview = page.locator('.import-preview');
    await soon(() => preview.textContent()).toMatch(
      /5 readings, from 23:40 on Mon 9 Mar to 00:20 on Tue 10 Mar \(40 min\), in °C/,
    );
    expect(await preview.textContent()).toMatch(/Line 3: 00:00 is read as past midnight/);
    expect(await preview.textContent()).toMatch(/Line 5: "ERR" is no temperature/);
    expect(await page.locator('.reading').count()).toBe(0);
    await preview.getByRole('button', { name: /Take these 5 readings/ }).click();
    await soon(() => page.locator('.reading').count()).toBe(5);
    // Derived: 00:00 to 00:10 is 10 min of 2; the unreadable line after it proves nothing.
    await expectStand(page, /PASS.*from 00:00 to 00:10: 10 min/s);
    expect(visit.problems).toEqual([]);
  });

  it('comes from a file in °F with a column to choose', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await page.getByLabel('Core', { exact: true }).fill('10');
    await page.keyboard.press('Enter');
    await page.getByText('Paste a log, or load a logger').click();
    await page.locator('.import input[type=file]').setInputFiles({
      name: 'logger.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        'Date;Time;Core (°F);Bath (°F)\n2026-03-10;09:00;50,2;172,4\n2026-03-10;09:10;68,0;172,6\n2026-03-10;09:20;90,1;172,5\n',
      ),
    });
    await soon(() => page.locator('.import').textContent()).toMatch(/Several columns hold temperatures/);
    await page.getByLabel('Column of the core').selectOption({ label: 'Core (°F)' });
    const preview = page.locator('.import-preview');
    await soon(() => preview.textContent()).toMatch(/3 readings, from 09:00 on Tue 10 Mar.*in °F/s);
    await preview.getByRole('button', { name: /Take these 3 readings/ }).click();
    // Derived: 68.0 °F is 20 °C.
    await soon(() => page.locator('.readings-table').textContent()).toMatch(/counts as 20\.0 °C/);
  });

  it('of ten megabytes is refused without a word lost', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await addReading(page, '1000', '50');
    await page.getByText('Paste a log, or load a logger').click();
    await paste(page.getByLabel('One reading a line'), '12:00 60.5\n'.repeat(1_000_000));
    await soon(() => page.locator('.import').textContent(), 30_000).toMatch(
      /longer than a log that can be read here/,
    );
    await page.getByRole('button', { name: 'Put it away' }).click();
    await addReading(page, '1001', '51');
    await soon(() => page.locator('.reading').count()).toBe(2);
  });
});

describe('whatever is typed', () => {
  it('odd texts as a new reading are refused, kept in their field, and still there after a reload', {
    timeout: ODD_TIMEOUT_MS,
  }, async () => {
    await using visit = await openBlank();
    const { page } = visit;
    const core = page.getByLabel('Core', { exact: true });
    for (const odd of ODD_TEXTS.filter((text) => text !== '-3')) {
      await core.fill(odd);
      await page.keyboard.press('Enter');
      await soon(() => page.locator('.quick-entry [data-entry=temperature] .field-problem').count()).toBe(1);
      expect(await page.locator('.reading').count(), odd).toBe(0);
      await page.reload();
      await awake(page);
      await soon(() => core.inputValue()).toBe(odd);
    }
    // A core of −3 °C is a reading like any other.
    await core.fill('-3');
    await page.keyboard.press('Enter');
    await soon(() => page.locator('.reading').count()).toBe(1);
  });

  it('odd texts in a reading of the log are kept and never computed with', {
    timeout: ODD_TIMEOUT_MS,
  }, async () => {
    await using visit = await openPage(TERRINE);
    const { page } = visit;
    await expectStand(page, /PASS/);
    await expectOddTextsKept(page, page.getByLabel('Core at 16:45', { exact: true }), {
      answers: () => expectStand(page, /PASS/),
    });
  });

  it('a time that is none stays with its reason and does not move the reading', async () => {
    await using visit = await openBlank();
    const { page } = visit;
    await addReading(page, '1000', '50');
    const time = page.getByLabel('Time of reading 10:00');
    await time.fill('soon');
    await time.blur();
    expect(await time.inputValue()).toBe('soon');
    await soon(() => page.locator('.reading').textContent()).toMatch(/"soon" is not a time of day/);
    await addReading(page, 'noon', '51');
    await soon(() => page.locator('.quick-entry').textContent()).toMatch(/"noon" is not a time of day/);
    expect(await page.locator('.reading').count()).toBe(1);
  });
});

it('prints every reading of the log, though the screen shows a page of them', async () => {
  await using visit = await openPage(TERRINE);
  const { page } = visit;
  await expectStand(page, /PASS/);
  await soon(() => page.locator('.reading').count()).toBe(15);
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  // The invented log holds 39 readings.
  await soon(() => page.locator('.reading').count()).toBe(39);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await soon(() => page.locator('.reading').count()).toBe(15);
});

it('fits a phone and breaks no accessibility rule with a log open', async () => {
  await using visit = await openPage(TERRINE, { width: 320, height: 640, phone: true });
  const { page } = visit;
  await expectStand(page, /PASS/);
  await page.getByText('The same as a table').click();
  await page.getByText('Paste a log, or load a logger').click();
  await page.locator('.exclude summary').first().click();
  expect(await sidewaysScrollPx(page)).toBe(0);
  expect(await accessibilityFaults(page)).toEqual([]);
});

import { text as streamText } from 'node:stream/consumers';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { awake, field, saved } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';

const SETTINGS = '/settings/';
const FORMULA = '/worksheets/batch-formula/';

const open = (page: Page) => page.locator('.settings[data-life="blank"]').waitFor();

describe('the settings of the kitchen', () => {
  it('are kept, seen by another tab, taken over by a new batch as defaults, and go with the backup', async () => {
    await using visit = await openPage(SETTINGS, { width: 320, height: 640, phone: true });
    const { page, context } = visit;
    await open(page);
    expect(await sidewaysScrollPx(page)).toBe(0);
    await field(page, 'Name of the kitchen').fill('Tarnwick Training Kitchen');
    await page.getByLabel('Temperatures', { exact: true }).selectOption('F');
    await page.getByLabel('Paper in the printer').selectOption('letter');
    await page.getByLabel('Cooling', { exact: true }).selectOption('fr-catering');
    await page.getByRole('button', { name: 'Add a scale' }).click();
    await field(page, 'Smallest step').fill('0.1');
    await page.getByText('Curing salt is weighed to 0.1 g.').waitFor();
    await field(page, 'Smallest step').fill('0.1 oz');
    await page.locator('.field-problem').waitFor();
    await field(page, 'Smallest step').fill('0.1');

    const other = await context.newPage();
    await other.goto(SETTINGS);
    await open(other);
    expect(await field(other, 'Name of the kitchen').inputValue()).toBe('Tarnwick Training Kitchen');
    await other.getByLabel('Colours of the page').selectOption('dark');
    await expect.poll(() => page.getByLabel('Colours of the page').inputValue()).toBe('dark');
    await field(page, 'Height above sea level').fill('1420');
    await other.reload();
    await open(other);
    expect(await other.evaluate(() => document.documentElement.dataset.scheme)).toBe('dark');
    expect(await field(other, 'Height above sea level').inputValue()).toBe('1420');
    await other.close();

    await page.goto(`${FORMULA}#new`);
    await awake(page);
    await field(page, 'Product').fill('Hare terrine');
    await expect.poll(() => field(page, 'Kitchen').inputValue()).toBe('Tarnwick Training Kitchen');
    await saved(page);
    await page.goto('/worksheets/salt-and-cure/');
    await awake(page);
    expect(await field(page, 'Smallest step of the scale').inputValue()).toBe('0.1');
    expect(
      await page.locator('.field-label', { hasText: 'Smallest step of the scale' }).textContent(),
    ).toMatch(/default$/);
    await page.goto('/worksheets/press-and-chill/');
    await awake(page);
    const rule = page.locator('.field', { hasText: 'Whose rule on cooling' });
    await rule.getByText('not confirmed for this batch').waitFor();
    // 63 → 10 °C: arrêté du 21 décembre 2009, annexe IV; 145.4 °F rounded down as a maximum, derived.
    await expect
      .poll(() => page.locator('#legs ~ *').first().textContent())
      .toMatch(/145\u00A0°F \(63\u00A0°C\)/);
    await rule.getByRole('button', { name: 'It applies here' }).click();
    await expect.poll(() => rule.getByText('not confirmed').count()).toBe(0);
    await page.goto('/worksheets/thermometer/');
    await awake(page);
    expect(await page.getByLabel('Paper', { exact: true }).inputValue()).toBe('letter');

    await page.goto('/batches/');
    await page.getByRole('button', { name: /^Archive Hare/ }).click();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save all batches to a file' }).click();
    const text = await streamText(await (await saving).createReadStream());
    const file = JSON.parse(text);
    expect(file.$schema).toMatch(/^http.+\/schema\/batches-\d+\.json$/);
    expect(file.device).toMatchObject({ kitchen: { name: 'Tarnwick Training Kitchen' }, archived: [{}] });
    expect(visit.problems).toEqual([]);

    await using fresh = await openPage('/records/');
    await fresh.page.locator('input[type="file"]').setInputFiles({
      name: 'backup.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    const wanted = fresh.page.getByLabel('Take over the settings of this kitchen');
    expect(await wanted.isChecked()).toBe(true);
    await fresh.page.getByRole('button', { name: 'Take in 1 batch' }).click();
    await fresh.page.getByText('The settings were taken over.').waitFor();
    await fresh.page.goto(SETTINGS);
    await open(fresh.page);
    expect(await field(fresh.page, 'Smallest step').inputValue()).toBe('0.1');
    await fresh.page.goto('/batches/');
    await fresh.page.getByText('0 of 1.').waitFor();
    expect(fresh.problems).toEqual([]);
  });

  it('that the browser lets nobody keep stay on screen, and the page says so', async () => {
    await using visit = await openPage('/404.html');
    const { page } = visit;
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
      };
    });
    await page.goto(SETTINGS);
    await open(page);
    await field(page, 'Name of the kitchen').fill('Lamplight Quay');
    await page.getByText('This device does not keep the settings').waitFor();
    await page.getByLabel('Paper in the printer').selectOption('letter');
    expect(await field(page, 'Name of the kitchen').inputValue()).toBe('Lamplight Quay');
    expect(visit.problems).toEqual([]);
  });
});

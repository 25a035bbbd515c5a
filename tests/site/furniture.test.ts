import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './browser.ts';

const scheme = (page: Page) => page.evaluate(() => getComputedStyle(document.documentElement).colorScheme);
const paper = (page: Page) => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);

describe('the dark scheme', () => {
  it('follows the system', async () => {
    await using visit = await openPage('/', { colorScheme: 'dark' });
    expect(await scheme(visit.page)).toBe('dark');
    await visit.page.emulateMedia({ colorScheme: 'light' });
    expect(await scheme(visit.page)).toBe('light');
  });

  it('can be switched, is remembered on the next page before its first paint, and can be given back', async () => {
    await using visit = await openPage('/', { colorScheme: 'light' });
    const { page } = visit;
    const light = await paper(page);
    await page.locator('.scheme').click();
    expect(await scheme(page)).toBe('dark');
    await page.goto('/cautions/', { waitUntil: 'commit' });
    await page.waitForSelector('body', { state: 'attached' });
    expect(await page.evaluate(() => document.documentElement.dataset.scheme)).toBe('dark');
    await page.locator('.scheme').click();
    expect(await paper(page)).toBe(light);
    expect(await page.evaluate(() => localStorage.getItem('scheme'))).toBeNull();
  });

  it('works where storage is refused', async () => {
    await using visit = await openPage('/');
    const { page } = visit;
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new Error('refused');
        },
      });
    });
    await page.goto('/defects/');
    await page.locator('.scheme').click();
    expect(await scheme(page)).toBe('dark');
    expect(visit.problems).toEqual([]);
  });
});

describe('without JavaScript', () => {
  it('the contents at the foot lead everywhere, and no dead button shows', async () => {
    await using visit = await openPage('/', { javaScript: false, width: 360 });
    const { page } = visit;
    await page.locator('.to-contents').click();
    expect(page.url()).toContain('#contents');
    expect(await page.locator('.scheme').isVisible()).toBe(false);
    await page.locator('.contents a', { hasText: 'Press and chill log' }).click();
    expect(await page.locator('h1').textContent()).toBe('Press and chill log');
  });

  it('answers fold and unfold', async () => {
    await using visit = await openPage('/technique/curing-salts/', { javaScript: false });
    const answer = visit.page.locator('.self-check details').first();
    expect(await answer.locator('p').isVisible()).toBe(false);
    await answer.locator('summary').click();
    expect(await answer.locator('p').isVisible()).toBe(true);
  });
});

describe('a question of the self-check', () => {
  it('shows its answer once the reader has tried, by keyboard, and keeps what was written beside it', async () => {
    await using visit = await openPage('/technique/curing-salts/', { width: 360, phone: true });
    const { page } = visit;
    const question = page.locator('.self-check > li').first();
    const answer = question.locator('details');
    expect(await page.locator('.self-check details:visible').count()).toBe(0);
    await question.getByLabel('Your answer').focus();
    await page.keyboard.type('more than that');
    await page.keyboard.press('Enter');
    expect(await answer.locator('p').isVisible()).toBe(true);
    expect(await question.getByLabel('Your answer').inputValue()).toBe('more than that');
    await page.keyboard.press('Enter');
    expect(await answer.locator('p').isVisible()).toBe(false);
    expect(await page.locator('.self-check details:visible').count()).toBe(1);

    const second = page.locator('.self-check > li').nth(1);
    const { height = 0 } = (await second.getByRole('button').boundingBox()) ?? {};
    expect(height).toBeGreaterThanOrEqual(44);
    await second.getByRole('button', { name: 'I have answered' }).click();
    expect(await second.locator('details p').isVisible()).toBe(true);
    expect(await second.getByLabel('Your answer').count()).toBe(0);
    expect(visit.problems).toEqual([]);
  });
});

it('the first Tab reaches the skip link, and it lands on the text', async () => {
  await using visit = await openPage('/technique/press-and-chill/');
  const { page } = visit;
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
});

it('links of the head, the foot and the outline are big enough for a wet thumb', async () => {
  await using visit = await openPage('/technique/country-terrine/', { width: 360, phone: true });
  const small = await visit.page
    .locator('.head a, .head button, .contents a, .outline a, .press')
    .evaluateAll((all) =>
      all
        .filter((one) => one.getBoundingClientRect().height > 0 && one.getBoundingClientRect().height < 44)
        .map((one) => one.textContent),
    );
  expect(small).toEqual([]);
});

describe('on paper', () => {
  it('stops stand, answers are open, furniture is gone', async () => {
    await using visit = await openPage('/technique/curing-salts/');
    const { page } = visit;
    await page.emulateMedia({ media: 'print' });
    const stops = page.locator('.caution[data-severity="stop"]');
    expect(await stops.count()).toBe(5);
    for (const stop of await stops.all()) expect(await stop.isVisible()).toBe(true);
    expect(await page.locator('.head').isVisible()).toBe(false);
    expect(await page.locator('.contents').isVisible()).toBe(false);
    expect(await page.locator('.standing').isVisible()).toBe(true);
    expect(
      await page
        .locator('.self-check details p')
        .first()
        .evaluate((p) => p.getBoundingClientRect().height),
    ).toBeGreaterThan(0);
  });
});

it('a page that asks another host is found out, and the other host hears nothing', async () => {
  // The same server under two names: its own, and one that any browser but that of the tests would find.
  const heard: string[] = [];
  const server = createServer((request, response) => {
    heard.push(`${request.headers.host?.split(':')[0]}${request.url}`);
    const { port } = server.address() as AddressInfo;
    response.setHeader('Content-Type', 'text/html');
    response.end(
      `<title>Planted</title><link rel="icon" href="data:,"><img alt="" src="http://localhost:${port}/told.png">`,
    );
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  try {
    const { port } = server.address() as AddressInfo;
    await using visit = await openPage('/', { origin: `http://127.0.0.1:${port}` });
    expect(visit.problems).toContain(`request to another host: http://localhost:${port}/told.png`);
    expect(visit.problems.join(' ')).toContain('ERR_NAME_NOT_RESOLVED');
    expect(heard).toEqual(['127.0.0.1/']);
  } finally {
    server.close();
  }
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage } from './browser.ts';

/** Opens the search by its key and types, then waits for the answer. */
async function search(page: Page, term: string): Promise<void> {
  if (
    !(await page
      .locator('.search-field')
      .isVisible()
      .catch(() => false))
  )
    await page.keyboard.press('/');
  await page.locator('.search-field').fill(term);
  await page.waitForFunction((wanted) => {
    const field = document.querySelector<HTMLInputElement>('.search-field');
    return field?.value === wanted && document.querySelector('.search-hits a') !== null;
  }, term);
}

const kindsOf = (page: Page) => page.locator('.search-hits .search-kind').allTextContents();
const linksOf = (page: Page) =>
  page.locator('.search-hits a').evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));

describe('search by keyboard', () => {
  it('opens with "/", walks with the arrows, and Escape gives the focus back', async () => {
    await using visit = await openPage('/technique/curing-salts/');
    const { page } = visit;
    await search(page, 'pink salt');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    expect(
      await page
        .locator('.search-hits a')
        .nth(1)
        .evaluate((link) => link === document.activeElement),
    ).toBe(true);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    expect(await page.locator('.search-field').evaluate((field) => field === document.activeElement)).toBe(
      true,
    );
    await page.keyboard.press('Escape');
    await page.locator('.search-dialog').waitFor({ state: 'hidden' });
    expect(visit.problems).toEqual([]);
  });

  it('opens the first result with Enter', async () => {
    await using visit = await openPage('/');
    await search(visit.page, 'crumbly');
    await visit.page.keyboard.press('Enter');
    await visit.page.waitForURL('**/defects/crumbly/');
  });

  it('leaves "/" alone inside a field', async () => {
    await using visit = await openPage('/');
    await search(visit.page, 'press');
    await visit.page.keyboard.press('End');
    await visit.page.keyboard.press('/');
    expect(await visit.page.locator('.search-field').inputValue()).toBe('press/');
  });

  it('opens from the link in the head as well', async () => {
    await using visit = await openPage('/cautions/');
    await visit.page.locator('.head [data-search]').click();
    await visit.page.locator('.search-field').waitFor();
  });
});

describe('what stands first', () => {
  // Words people use at the bench, and the page that must come first: common practice, no source.
  it.each([
    ['pink salt', '/cautions/pink-salt-mix-ups/'],
    ['is it safe if pink', '/cautions/poultry-cooked-through/'],
    ['left out overnight', '/cautions/cooling-clock/'],
    ['smells eggy', '/defects/gas-holes/'],
    ['can I vac pac', '/cautions/sealed-without-air/'],
    ['how long in fridge', '/cautions/home-keeping/'],
    ['blue lips', '/cautions/weigh-curing-salt/'],
    ['pregnant', '/cautions/listeria-in-pate/'],
    ['thermometer wrong', '/cautions/thermometer-check/'],
    ['country terrine', '/technique/country-terrine/'],
  ])('%s → %s', async (term, path) => {
    await using visit = await openPage('/');
    await search(visit.page, term);
    expect((await linksOf(visit.page))[0]?.replace(/#.*/, '')).toBe(path);
  });

  it('a caution that matches stands above prose', async () => {
    await using visit = await openPage('/');
    await search(visit.page, 'probe');
    const kinds = await kindsOf(visit.page);
    expect(kinds[0]).toMatch(/^caution · /);
    expect(kinds.some((kind) => kind.startsWith('technique'))).toBe(true);
  });
});

describe('the kinds', () => {
  it('are counted, and show only what is asked for', async () => {
    await using visit = await openPage('/');
    const { page } = visit;
    await search(page, 'nitrite');
    const button = page.locator('.search-kinds button', { hasText: 'Tables' });
    const [, count = ''] = /(\d+)$/.exec((await button.textContent()) ?? '') ?? [];
    await button.click();
    await page.locator('.search-kinds [aria-pressed="true"]', { hasText: 'Tables' }).waitFor();
    await page.locator('.search-said', { hasText: `${count} found` }).waitFor();
    expect(new Set(await kindsOf(page))).toEqual(new Set(['table']));
  });
});

it('a result lands on the section it names', async () => {
  await using visit = await openPage('/');
  await search(visit.page, 'expert committee minced');
  const links = await linksOf(visit.page);
  expect(links.some((link) => link.includes('/tables/cooking-lethality/#'))).toBe(true);
});

it('what is typed is never markup', async () => {
  await using visit = await openPage('/');
  const { page } = visit;
  await page.keyboard.press('/');
  await page.locator('.search-field').fill('<img src=x onerror=alert(1)>');
  await page.locator('.search-said', { hasText: /found|Nothing/ }).waitFor();
  expect(await page.locator('.search-dialog img').count()).toBe(0);
  expect(visit.problems).toEqual([]);
});

it('the search page answers a query in its address, and lists everything without JavaScript', async () => {
  await using visit = await openPage('/search/?q=greening');
  await visit.page.locator('.search-hits a', { hasText: 'Green patches' }).waitFor();
  const colours = await visit.page
    .locator('.search-kinds button:not([disabled])')
    .evaluateAll((all) => all.map((one) => getComputedStyle(one).backgroundColor));
  expect(new Set(colours.slice(1))).not.toContain(colours[0]);
  await using plain = await openPage('/search/', { javaScript: false });
  expect(await plain.page.locator('.lines a').count()).toBeGreaterThan(90);
});

import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { sitePaths } from './pages.ts';

/** The narrowest screen we promise, px: an old small phone. */
const NARROWEST_PX = 320;

/** Broken rules, each with the elements that break it. All rules are tried unless some are named. */
async function accessibilityFaults(page: Page, rules?: string[]): Promise<string[]> {
  const axe = new AxeBuilder({ page });
  const { violations } = await (rules ? axe.withRules(rules) : axe).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

it('the build holds pages', () => {
  expect(sitePaths()).toContain('/');
  expect(sitePaths()).toContain('/404.html');
});

describe.concurrent.each(sitePaths())('%s', (path) => {
  it('loads without an error, and asks no other host for anything', async () => {
    await using visit = await openPage(path);
    expect(visit.problems).toEqual([]);
  });

  it('never scrolls sideways at 320 px', async () => {
    await using visit = await openPage(path, { width: NARROWEST_PX, height: 640, phone: true });
    expect(await sidewaysScrollPx(visit.page)).toBe(0);
  });

  it('breaks no accessibility rule, and no rule of contrast in its dark scheme', async () => {
    await using visit = await openPage(path);
    expect(await accessibilityFaults(visit.page)).toEqual([]);
    await visit.page.emulateMedia({ colorScheme: 'dark' });
    expect(await accessibilityFaults(visit.page, ['color-contrast'])).toEqual([]);
  });

  it('can be read without JavaScript: one main heading, and text', async () => {
    await using visit = await openPage(path, { javaScript: false });
    expect(await visit.page.locator('h1').count()).toBe(1);
    expect(((await visit.page.locator('main').textContent()) ?? '').trim()).not.toBe('');
  });
});

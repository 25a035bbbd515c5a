import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { fileOf, sitePaths } from './pages.ts';

/** The narrowest screen we promise, px: an old small phone. */
const NARROWEST_PX = 320;

/** Broken rules, each with the elements that break it. All rules are tried unless some are named. */
async function accessibilityFaults(page: Page, rules?: string[]): Promise<string[]> {
  // Legacy mode skips frames of other origins. No page has one: the policy of no foreign request sees to that.
  const axe = new AxeBuilder({ page }).setLegacyMode(true);
  const { violations } = await (rules ? axe.withRules(rules) : axe).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

it('the build holds pages', () => {
  expect(sitePaths()).toContain('/');
  expect(sitePaths()).toContain('/404.html');
});

describe.concurrent.each(sitePaths())('%s', (path) => {
  // One visit for all, since opening is what costs.
  it('loads clean, fits 320 px, and breaks no accessibility rule in either scheme', async () => {
    await using visit = await openPage(path);
    const { page, problems } = visit;
    expect.soft(await accessibilityFaults(page), 'accessibility').toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect
      .soft(await accessibilityFaults(page, ['color-contrast']), 'contrast in the dark scheme')
      .toEqual([]);
    await page.setViewportSize({ width: NARROWEST_PX, height: 640 });
    expect.soft(await sidewaysScrollPx(page), 'sideways scroll, px').toBe(0);
    expect(problems, 'errors, warnings and foreign requests').toEqual([]);
  });

  it('has one main heading and text in the HTML itself, before any script', () => {
    const html = readFileSync(fileOf(path), 'utf8');
    expect(html.match(/<h1[\s>]/g)).toHaveLength(1);
    const main = /<main[\s>].*<\/main>/s.exec(html)?.[0] ?? '';
    const text = main
      .replace(/<(script|style|template)\b.*?<\/\1>/gs, '')
      .replace(/<[^>]*>/g, ' ')
      .trim();
    expect(text.length).toBeGreaterThan(100);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { fileOf, sitePaths } from './pages.ts';

/** The narrowest screen we promise, px: an old small phone. */
const NARROWEST_PX = 320;

it('the build holds pages', () => {
  expect(sitePaths()).toContain('/');
  expect(sitePaths()).toContain('/404.html');
});

describe.concurrent.each(sitePaths())('%s', (path) => {
  // One visit for all, since opening is what costs.
  it('loads clean, fits 320 px, and breaks no accessibility rule in either scheme', async () => {
    await using visit = await openPage(path);
    const { page, problems } = visit;
    const accessibility = await accessibilityFaults(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    const darkContrast = await accessibilityFaults(page, { rules: ['color-contrast'] });
    await page.setViewportSize({ width: NARROWEST_PX, height: 640 });
    const sidewaysPx = await sidewaysScrollPx(page);
    expect({ accessibility, darkContrast, sidewaysPx, problems }).toEqual({
      accessibility: [],
      darkContrast: [],
      sidewaysPx: 0,
      problems: [],
    });
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

import AxeBuilder from '@axe-core/playwright';
import { describe, expect, it } from 'vitest';
import { openPage, sidewaysScrollPx } from './browser.ts';
import { sitePaths } from './pages.ts';

/** The narrowest screen we promise, px: an old small phone. */
const NARROWEST_PX = 320;

it('the build holds pages', () => {
  expect(sitePaths()).toContain('/');
  expect(sitePaths()).toContain('/404.html');
});

describe.each(sitePaths())('%s', (path) => {
  it('loads without an error, and asks no other host for anything', async () => {
    await using visit = await openPage(path);
    expect(visit.problems).toEqual([]);
  });

  it('never scrolls sideways at 320 px', async () => {
    await using visit = await openPage(path, { width: NARROWEST_PX, height: 640, phone: true });
    expect(await sidewaysScrollPx(visit.page)).toBe(0);
  });

  it.each(['light', 'dark'] as const)(
    'breaks no accessibility rule in its %s scheme',
    async (colorScheme) => {
      await using visit = await openPage(path, { colorScheme });
      const { violations } = await new AxeBuilder({ page: visit.page }).analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`),
      ).toEqual([]);
    },
  );

  it('can be read without JavaScript: one main heading, and text', async () => {
    await using visit = await openPage(path, { javaScript: false });
    expect(await visit.page.locator('h1').count()).toBe(1);
    expect(((await visit.page.locator('main').textContent()) ?? '').trim()).not.toBe('');
  });
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { accessibilityFaults } from './accessibility.ts';
import { awake, field } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';

/*
 * One page of every kind in the ways people look at it. Every page in light and dark is in every-page.test.ts.
 */

/** WCAG 2.2, 1.4.10 Reflow: 1280 CSS px wide and 1024 high at 400 % leave 320 by 256. */
const ZOOMED_400 = { width: 320, height: 256 };
/** House rule; WCAG 2.2, 2.5.8 asks for 24. */
const TARGET_PX = 44;

const KINDS = [
  '/',
  '/technique/country-terrine/',
  '/cautions/cooling-clock/',
  '/defects/',
  '/tables/nitrite-limits/',
  '/glossary/',
  '/search/?q=salt',
  '/how-we-know/',
  '/batches/',
  '/worksheets/salt-and-cure/#demo=country-terrine',
];

/** What no rule of the checker looks at: text that is cut off, small targets, and things that move though told not to. */
function lookedOver(page: Page, targetPx: number) {
  return page.evaluate((least) => {
    const shown = (one: Element) =>
      one.checkVisibility({ visibilityProperty: true }) &&
      one.getBoundingClientRect().width > 1 &&
      one.closest('.unseen') === null;
    const named = (one: Element) => `${one.tagName} ${one.className} ${one.textContent.trim().slice(0, 30)}`;
    const all = [...document.querySelectorAll('body *')];
    return {
      cut: all
        .filter((one) => !(one instanceof HTMLInputElement) && shown(one))
        .filter((one) => /hidden|clip/.test(getComputedStyle(one).overflowX))
        .filter((one) => one.scrollWidth > one.clientWidth + 1)
        .map(named),
      // A link within a sentence takes the height of its line (2.5.8, inline).
      small: [
        ...document.querySelectorAll('button, input:not([type=hidden]), select, textarea, summary, a[href]'),
      ]
        .filter((one) => shown(one) && !(one.matches('a') && getComputedStyle(one).display === 'inline'))
        .filter((one) => (one.closest('label') ?? one).getBoundingClientRect().height < least - 0.5)
        .map(named),
      moving: all
        .filter((one) => {
          const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one);
          const lasts = transitionDuration.split(',').some((time) => Number.parseFloat(time) > 0.001);
          return lasts || animationName !== 'none' || scrollBehavior === 'smooth';
        })
        .map(named),
    };
  }, targetPx);
}

describe.concurrent.each(KINDS)('%s', (path) => {
  it('is whole at 400 % zoom, in the colours of the system, in the dark, and where nothing may move', async () => {
    await using visit = await openPage(path, { ...ZOOMED_400, phone: true });
    const { page, problems } = visit;
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const faults = await accessibilityFaults(page);
    const looked = await lookedOver(page, TARGET_PX);
    const sidewaysPx = await sidewaysScrollPx(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    const dark = await accessibilityFaults(page, { rules: ['color-contrast', 'link-in-text-block'] });
    await page.emulateMedia({ colorScheme: 'light', forcedColors: 'active' });
    const forced = await forcedContrastFaults(page);
    const frameless = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          'input:not([type=hidden], [type=checkbox], [type=radio]), select, button.press',
        ),
      ]
        .filter((one) => one.checkVisibility() && getComputedStyle(one).borderBlockEndStyle === 'none')
        .map((one) => one.outerHTML.slice(0, 60)),
    );
    expect({ faults, ...looked, sidewaysPx, dark, forced, frameless, problems }).toEqual({
      faults: [],
      cut: [],
      small: [],
      moving: [],
      sidewaysPx: 0,
      dark: [],
      forced: [],
      frameless: [],
      problems: [],
    });
  });
});

/**
 * Text that does not stand out from what lies behind it in the colours of the system, 4.5 : 1. The checker reads the
 * colours of the page's author there, so this reads those that are painted.
 */
function forcedContrastFaults(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const parts = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const light = (colour: string) =>
      parts(colour)
        .slice(0, 3)
        .map((part) => part / 255)
        .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4))
        .reduce((sum, part, at) => sum + part * ([0.2126, 0.7152, 0.0722][at] ?? 0), 0);
    const behind = (one: Element | null): string => {
      if (one === null) return 'rgb(255, 255, 255)';
      const { backgroundColor } = getComputedStyle(one);
      return (parts(backgroundColor)[3] ?? 1) > 0 ? backgroundColor : behind(one.parentElement);
    };
    return [...document.querySelectorAll('body *')]
      .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
      .filter(
        (one) =>
          one.checkVisibility({ visibilityProperty: true }) && !one.closest('svg, :disabled, script, style'),
      )
      .filter((one) => {
        const [low = 0, high = 0] = [light(getComputedStyle(one).color), light(behind(one))].sort(
          (a, b) => a - b,
        );
        return (high + 0.05) / (low + 0.05) < 4.5;
      })
      .map((one) => one.outerHTML.slice(0, 80));
  });
}

/** Notes of everything that takes the focus whether it shows, and whether anything lies over it. */
function watchFocus(page: Page) {
  return page.evaluate(() => {
    document.addEventListener('focusin', ({ target }) => {
      if (!(target instanceof HTMLElement)) return;
      // Round once: the browser's own controls lie between the last and the first.
      if (target === document.querySelector('[data-walked]')) document.body.dataset.round = '';
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(target);
      const rings = (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== 'none';
      // A field of a date is walked in parts, and the last of them draws a ring of its own.
      if (target.dataset.walked !== 'seen') target.dataset.walked = rings ? 'seen' : 'no ring';
    });
    // On leaving, for by then it has been scrolled to. The link past the furniture is gone again by then.
    document.addEventListener('focusout', ({ target }) => {
      if (!(target instanceof HTMLElement) || target.matches('.skip')) return;
      const [box = target.getBoundingClientRect()] = target.getClientRects();
      const over = document.elementFromPoint(
        Math.min(Math.max(box.x + box.width / 2, 1), innerWidth - 1),
        Math.min(Math.max(box.y + Math.min(box.height / 2, 12), 1), innerHeight - 1),
      );
      const free =
        over === null || target.contains(over) || over.contains(target) || over.closest('label') !== null;
      if (!free) target.dataset.walked = 'covered';
    });
  });
}

/** Those that no walk from nothing in by-keyboard.test.ts or in their own tests goes through whole. */
const WALKS = [
  '/worksheets/cook-plan/#demo=country-terrine',
  '/worksheets/cook-log/#demo=country-terrine',
  '/worksheets/press-and-chill/#demo=country-terrine',
  '/worksheets/thermometer/',
  '/worksheets/batch-sheet/#demo=country-terrine',
  '/batches/',
  '/records/',
];

describe.concurrent.each(WALKS)('the Tab key through %s', (path) => {
  it('reaches every control in order, shows where it stands, never under a bar, and leaves again', {
    timeout: 120_000,
  }, async () => {
    await using visit = await openPage(path, { width: 320, height: 640 });
    const { page } = visit;
    if ((await page.locator('.worksheet').count()) > 0) await awake(page);
    await page.waitForLoadState('networkidle');
    await watchFocus(page);
    const atEnd = () => page.evaluate(() => 'round' in document.body.dataset);
    let presses = 0;
    for (; presses < 600 && !(await atEnd()); presses += 10)
      for (let press = 0; press < 10; press++) await page.keyboard.press('Tab');
    expect(presses).toBeLessThan(600);
    const unseen = await page
      .locator('[data-walked]:not([data-walked=seen])')
      .evaluateAll((all) =>
        all.map((one) => `${one.getAttribute('data-walked')}: ${one.outerHTML.slice(0, 90)}`),
      );
    expect(unseen).toEqual([]);
    const missed = await page.evaluate(() =>
      [
        ...document.querySelectorAll<HTMLElement>(
          'main :is(button, input, select, textarea, summary, a[href])',
        ),
      ]
        .filter(
          (one) =>
            one.checkVisibility({ visibilityProperty: true }) && !one.matches(':disabled, [tabindex="-1"]'),
        )
        // Of a group of round choices the Tab key takes one, the arrow keys the rest.
        .filter((one) => !one.matches('[type=radio]') && one.dataset.walked === undefined)
        .map((one) => one.outerHTML.slice(0, 90)),
    );
    expect(missed).toEqual([]);
    expect(visit.problems).toEqual([]);
  });
});

const CHARTS = [
  '/',
  '/worksheets/cook-log/#demo=country-terrine',
  '/worksheets/press-and-chill/#demo=pate-en-croute-cooling-fails',
  '/worksheets/cook-plan/#demo=country-terrine',
];

describe.concurrent.each(CHARTS)('the drawings of %s', (path) => {
  it('have a name, and say the same in words; ornament is silent', async () => {
    await using visit = await openPage(path);
    const { page } = visit;
    await page.locator('svg[role=img]').first().waitFor();
    const drawn = await page.locator('svg').evaluateAll((all) =>
      all.map((svg) => {
        const named = (svg.getAttribute('aria-labelledby') ?? '').split(' ').filter(Boolean);
        const figure = svg.closest('figure');
        return {
          silent: svg.closest('[aria-hidden=true]') !== null,
          role: svg.getAttribute('role'),
          name:
            svg.getAttribute('aria-label') ??
            named.map((id) => document.getElementById(id)?.textContent ?? '').join(' '),
          words: figure?.querySelector('figcaption')?.textContent ?? '',
        };
      }),
    );
    const charts = drawn.filter(({ silent }) => !silent);
    expect(charts.length).toBeGreaterThan(0);
    for (const { role, name, words } of charts) {
      expect(role).toBe('img');
      expect(name.trim().length).toBeGreaterThan(3);
      // With figures, not only a title.
      expect(`${name} ${words}`, name).toMatch(/\d/);
    }
  });
});

it('findings are spoken politely when they turn, and nothing shouts', async () => {
  await using visit = await openPage('/worksheets/salt-and-cure/#demo=country-terrine');
  const { page } = visit;
  await page.locator('.verdict').first().waitFor();
  const loud = await page
    .locator('[aria-live=assertive], [role=alert]')
    .evaluateAll((all) =>
      all.filter((one) => one.textContent.trim() !== '').map((one) => one.outerHTML.slice(0, 80)),
    );
  expect(loud).toEqual([]);
  // What is inside a live region is spoken when it changes. Every field stands outside, so that no key is.
  expect(await page.locator('[aria-live] :is(input, select, textarea)').count()).toBe(0);
  await page.evaluate(() => {
    const spoken: string[] = [];
    Object.assign(globalThis, { spoken });
    for (const region of document.querySelectorAll('[aria-live], [role=status]')) {
      let last = region.textContent;
      new MutationObserver(() => {
        if (region.textContent !== last) spoken.push(region.textContent.slice(0, 80));
        last = region.textContent;
      }).observe(region, { subtree: true, childList: true, characterData: true });
    }
  });
  const spoken = () => page.evaluate(() => (globalThis as unknown as { spoken: string[] }).spoken);
  // What has not changed is not said again, though everything is computed anew at every key.
  const strength = field(page, 'Sodium nitrite in it, by the pack');
  await strength.press('End');
  await page.keyboard.type('   ', { delay: 30 });
  await page.waitForTimeout(500);
  expect(await spoken()).toEqual([]);
  await strength.fill('');
  await expect.poll(async () => (await spoken()).join(' ')).toMatch(/cannot tell/i);
});

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { awake, expectAnswer, tabTo } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';

/** Where the focus goes, and what is pressed or typed there. `⇧` before a name looks for it backwards. */
type Step = readonly [to: string | RegExp, keys: string];

interface Worksheet {
  slug: string;
  steps: readonly Step[];
  /** An answer by its label, and how it begins. */
  result: readonly [label: string, reads: RegExp];
}

const DOWN = '↓';
const ENTER = '⏎';
const CURE: readonly Step[] = [
  ['Sodium nitrite in it, by the pack', '6.25'],
  ['Nitrate in it, by the pack', '0'],
];
/** What the first result of every worksheet needs, from nothing. What it comes to is shown by its own test. */
const WORKSHEETS: readonly Worksheet[] = [
  {
    slug: 'batch-formula',
    steps: [
      ['Add an ingredient', ENTER],
      ['Ingredient', 'Own lean'],
      ['Amount', '1000'],
    ],
    result: ['Everything in the bowl', /^1000\sg/],
  },
  { slug: 'plan-and-cost', steps: [['Portions', '40']], result: ['Mix to make', /\d\sg/] },
  {
    slug: 'trim-and-yield',
    steps: [
      ['Begin a test', ENTER],
      ['As bought', '10'],
      ['Trimmed lean', '7000'],
      ['Usable fat', '2000'],
      ['Garnish pieces', '0'],
      ['Skin and bone', '0'],
      ['Sinew, glands and waste', '900'],
    ],
    result: ['Yield, the mean of the trials', /^70\.0 %/],
  },
  {
    slug: 'lean-and-fat',
    steps: [
      ['Add a material', ENTER],
      ['Material', 'Lean'],
      [/^Pack figures.*Lean/, ENTER],
      ['Fat in it', '3'],
      ['Add a material', ENTER],
      ['Material', 'Fat'],
      [/^Pack figures.*Fat/, ENTER],
      ['Fat in it', '88'],
      ['Weight to make, fixed materials included', '10'],
      ['First free material', DOWN],
      ['Second free material', `${DOWN}${DOWN}`],
    ],
    // 28 % fat stands there as the default.
    result: ['Shares of the two', /^70\.59 : 29\.41/],
  },
  {
    slug: 'salt-and-cure',
    steps: [
      ['Whose rule on nitrite', DOWN],
      ['Smallest step of the scale', '0.1'],
      ['Add a curing salt to the formula', ENTER],
      ['Sodium nitrite in it, by the pack', '6.25'],
      ['In the formula', '5'],
    ],
    // Without meat there is nothing to dose, and that is said.
    result: ['Curing salt for the nitrite wanted', /^\w/],
  },
  {
    slug: 'dry-cure',
    steps: [
      ['Whose rule on nitrite', DOWN],
      ['What it is', DOWN],
      ['Smallest step of the scale', '0.1'],
      ['Nitrite wanted, as sodium nitrite', '120'],
      ...CURE,
      ['Add a piece', ENTER],
      ['⇧Weight without skin', '5000'],
      ['Thickest place', '40'],
    ],
    result: ['Plain salt', /^Weigh 116\sg/],
  },
  {
    slug: 'brine',
    steps: [
      ['Whose rule on nitrite', DOWN],
      ['What it is', DOWN],
      ['Smallest step of the scale', '0.1'],
      ['Way of the brine', DOWN],
      ['All the meat, without skin', '2000'],
      ['Water of the brine', '1000'],
      ['Nitrite wanted, as sodium nitrite', '120'],
      ...CURE,
    ],
    result: ['Plain salt', /^Weigh \d/],
  },
  {
    slug: 'drying',
    steps: [
      ['Degree-hour rule', DOWN],
      ['Add a stretch', ENTER],
      ['⇧Chamber at, stretch 1', '80 F'],
      ['For, stretch 1', '55'],
      ['Weight when drying began', '2000'],
      ['Weight now', '1600'],
    ],
    result: ['Lost so far', /^20\.0 %/],
  },
  {
    slug: 'seasoning',
    steps: [
      ['Total mix', '4'],
      ['Add a seasoning', ENTER],
      ['⇧Name of this spice', 'Wild thyme'],
      ['Dose of Wild thyme', '1.5'],
    ],
    result: ['All seasoning', /^6\.00\sg/],
  },
  {
    slug: 'binder-and-garnish',
    steps: [
      ['Meat', '2400'],
      ['Kind of panade', DOWN],
    ],
    result: ['Panade, cooked and cold', /^240\sg/],
  },
  {
    slug: 'chill-budget',
    steps: [
      ['Weight of Lean', '6'],
      ['Temperature of Lean', '2'],
      ['Weight of Fat', '3'],
      ['Temperature of Fat', '0'],
    ],
    result: ['The mix ends at', /°C/],
  },
  {
    slug: 'mould-and-fill',
    steps: [
      ['Add the mould', ENTER],
      ['⇧Depth, inside', '75'],
      ['⇧Width, inside', '95'],
      ['⇧Length, inside', '290'],
    ],
    result: ['Fill each mould with', /^1862\sg/],
  },
  {
    slug: 'crust',
    steps: [
      ['Add a mould to the batch', ENTER],
      ['⇧Depth, inside', '85'],
      ['⇧Width, inside', '80'],
      ['⇧Length, inside', '300'],
    ],
    result: ['Lid', /^340 × 120\smm/],
  },
  {
    slug: 'casings',
    steps: [
      ['To fill', '10'],
      ['Width once stuffed', '33'],
      ['Weight of a link', '120'],
    ],
    result: ['Links', /^83 links/],
  },
  {
    slug: 'gelee',
    steps: [['Liquid to set', '1000']],
    result: ['Gelatine to weigh', /^\d/],
  },
  {
    slug: 'slice-and-price',
    steps: [
      ['Cut into', DOWN],
      ['Finished weight, all moulds, after chilling', '2112'],
      ['Weight of a portion', '50'],
    ],
    result: ['Portions', /^40/],
  },
  {
    slug: 'label',
    steps: [
      ['Lost in the cook', DOWN],
      ['Add what is not in the formula', ENTER],
      ['Name in the list', 'crust'],
      ['Weight in the food', '400'],
      ['Cooked on', '03102026'],
    ],
    result: ['Use by', /^2026-03-14/],
  },
];

/** A law, a paper or a table by name; or plainly that there is none; or that it follows by arithmetic. */
const SOURCE =
  /common practice, no source|derived|from memory|\bCFR\b|Regulation \(E[CU]\)|FSIS|Food Standards|Food Code|Handbook|ASHRAE|\((?:19|20)\d\d\)|composition table|Guide to nutrition labeling/i;

async function take(page: Page, [to, keys]: Step): Promise<void> {
  if (typeof to === 'string' && to.startsWith('⇧')) await tabBackTo(page, to.slice(1));
  else await tabTo(page, to);
  if (keys === ENTER) {
    await page.keyboard.press('Enter');
    // A new row is fetched with the first of its kind, and takes the focus. Where nothing does, nothing is lost by waiting.
    await page
      .waitForFunction(() => document.activeElement instanceof HTMLInputElement, null, { timeout: 2_000 })
      .catch(() => undefined);
    await page.waitForTimeout(150);
  } else if (keys.startsWith(DOWN)) for (const _ of keys) await page.keyboard.press('ArrowDown');
  else {
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type(keys);
  }
}

async function tabBackTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 40; presses++) {
    const here = await page.evaluate(() => {
      const at = document.activeElement;
      return at instanceof HTMLInputElement ? (at.labels?.[0]?.textContent ?? '') : '';
    });
    if (here.replace(/\s*default$/, '').trim() === name) return;
    await page.keyboard.press('Shift+Tab');
  }
  throw new Error(`Shift and Tab never reached ${name}`);
}

/** Walks the worksheet with the Tab key once and opens every formula on the way. */
async function openFormulas(page: Page): Promise<void> {
  await page.locator('.worksheet').evaluate((sheet) => {
    sheet.setAttribute('tabindex', '-1');
    (sheet as HTMLElement).focus();
  });
  for (let presses = 0; presses < 400; presses++) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const here = document.activeElement;
      if (!here?.closest('.worksheet')) return 'out';
      const closed = here.matches('details.worked:not([open]) > summary');
      return closed ? 'closed' : 'on';
    });
    if (at === 'out') return;
    if (at === 'closed') await page.keyboard.press('Enter');
  }
  throw new Error('The Tab key never left the worksheet');
}

describe('from nothing, by the keyboard alone at 320 px, every output opens its formula and names its source', () => {
  it.each(WORKSHEETS)('$slug', async ({ slug, steps, result }) => {
    await using visit = await openPage(`/worksheets/${slug}/`, { width: 320, height: 640 });
    const { page } = visit;
    await awake(page);
    for (const step of steps) await take(page, step);
    await expectAnswer(page, ...result);
    await openFormulas(page);
    const seen = await page.evaluate(() => ({
      unexplained: [...document.querySelectorAll('.worksheet .answer')]
        .filter((answer) => !answer.querySelector('details.worked[open]'))
        .map((answer) => answer.querySelector('.answer-label')?.textContent ?? ''),
      closed: document.querySelectorAll('.worksheet details.worked:not([open])').length,
      formulas: [...document.querySelectorAll<HTMLElement>('.worksheet .worked-body')].map(
        (body) => body.textContent,
      ),
    }));
    expect(seen.unexplained).toEqual([]);
    expect(seen.closed).toBe(0);
    expect(seen.formulas.length).toBeGreaterThan(0);
    expect(seen.formulas.filter((text) => text.trim().length < 15 || !SOURCE.test(text))).toEqual([]);
    expect(await sidewaysScrollPx(page)).toBe(0);
    expect(visit.problems).toEqual([]);
  });
});

import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** Texts no number field should choke on. */
export const ODD_TEXTS = ['5 kgs', '1e999', '٣', '-3', '1,234', 'NaN', '<script>alert(1)</script>'];

/** What the focused element is called to a person who hears the page. */
function focusedName(page: Page): Promise<string> {
  return page.evaluate(() => {
    const here = document.activeElement;
    if (!(here instanceof HTMLElement)) return '';
    const labels = 'labels' in here ? (here.labels as NodeListOf<HTMLElement> | null) : null;
    const name = here.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? here.textContent ?? '';
    return name.replace(/\s+/g, ' ').trim().slice(0, 120);
  });
}

/** Goes on with the Tab key until the focus stands on something of that name. */
export async function tabTo(page: Page, name: string | RegExp, most = 400): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < most; presses++) {
    const here = await focusedName(page);
    if (typeof name === 'string' ? here === name || here === `${name} default` : name.test(here)) return;
    passed.push(here);
    await page.keyboard.press('Tab');
  }
  throw new Error(`The Tab key never reached ${name}. Passed: ${passed.join(' | ')}`);
}

/** Touches the worksheet, as a hand does, and waits until it has looked for a saved batch. */
export async function awake(page: Page): Promise<void> {
  await page.locator('.worksheet').first().dispatchEvent('pointerover');
  await page.locator('.worksheet:not([data-life="waking"])').waitFor();
}

/** The text box of that label, default or not; a unit beside it has a name of its own. */
export function field(within: Page | Locator, label: string): Locator {
  return within.getByRole('textbox', { name: new RegExp(`^${label}( default)?$`) });
}

/** The answer under a label of the worksheet. */
export function answer(page: Page, label: string): Locator {
  return page
    .locator('.answer')
    .filter({ has: page.getByText(label, { exact: true }) })
    .locator('.answer-value');
}

/** Waits until the answer under a label reads like that. */
export async function expectAnswer(page: Page, label: string, wanted: RegExp): Promise<void> {
  await expect.poll(() => answer(page, label).textContent()).toMatch(wanted);
}

/**
 * Nothing a person can read says that a number went wrong inside. What was typed may be quoted back; a card quotes
 * it with a question mark after it.
 */
export async function expectNoBrokenNumber(page: Page, typed?: string): Promise<void> {
  let text = (await page.locator('main').textContent()) ?? '';
  if (typed !== undefined) text = text.replaceAll(`${typed} ?`, '');
  expect(text.replaceAll(/"[^"]*"/g, '')).not.toMatch(/NaN|Infinity|undefined|\[object/);
}

/** Seven texts, each with a reload of the page. */
export const ODD_TIMEOUT_MS = 180_000;

export interface OddTexts {
  /** The answers that lean on the field, by their labels, or what tells that they hold. */
  answers: string | readonly string[] | ((holds: boolean) => Promise<void>);
  /** How those answers read while the text is odd. */
  refused?: RegExp;
  texts?: readonly string[];
  /** A card quotes what was typed. */
  quoted?: boolean;
}

/**
 * Types each odd text over the sound one that stands in the field. Its answers hold for the sound one alone, no number
 * breaks, and every text is there letter for letter after a reload.
 */
export async function expectOddTextsKept(
  page: Page,
  box: Locator,
  { answers, refused = /Cannot tell/, texts = ODD_TEXTS, quoted = false }: OddTexts,
): Promise<void> {
  const hold =
    typeof answers === 'function'
      ? answers
      : async (holds: boolean) => {
          for (const label of typeof answers === 'string' ? [answers] : answers) {
            const reads = expect.poll(() => answer(page, label).textContent());
            await (holds
              ? reads.toMatch(new RegExp(`^(?!.*(?:${refused.source})).*\\d`, 's'))
              : reads.toMatch(refused));
          }
        };
  const sound = await box.inputValue();
  expect(sound).not.toBe('');
  for (const odd of texts) {
    try {
      await box.fill(sound);
      await hold(true);
      await box.fill(odd);
      await hold(false);
      await expectNoBrokenNumber(page, quoted ? odd : undefined);
      await saved(page);
      await page.reload();
      await expect.poll(() => box.inputValue()).toBe(odd);
      await hold(false);
    } catch (error) {
      throw new Error(`With ${odd}: ${error instanceof Error ? error.message : String(error)}`, {
        cause: error,
      });
    }
  }
}

/** Everything typed so far is on the device: autosave runs within half a second. */
export async function saved(page: Page): Promise<void> {
  await page.waitForTimeout(600);
}

/** Puts a text into a field at once, as a paste does. */
export async function paste(field: Locator, text: string): Promise<void> {
  await field.evaluate((box, pasted) => {
    (box as HTMLInputElement).value = pasted;
    box.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertFromPaste' }));
  }, text);
}

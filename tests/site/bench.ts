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

/** Nothing a person can read says that a number went wrong inside. What was typed may be quoted back. */
export async function expectNoBrokenNumber(page: Page): Promise<void> {
  const text = (await page.locator('main').textContent()) ?? '';
  expect(text.replaceAll(/"[^"]*"/g, '')).not.toMatch(/NaN|Infinity|undefined|\[object/);
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

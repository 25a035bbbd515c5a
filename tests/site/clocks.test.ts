import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { awake, field, saved } from './bench.ts';
import { openPage, sidewaysScrollPx } from './browser.ts';

const CHILL = '/worksheets/press-and-chill/';

/** What the browser was asked for. */
interface Asked {
  locks: number;
  released: number;
  tones: number;
  vibrations: number;
  permissions: number;
}
declare global {
  interface Window {
    asked: Asked;
    dropLocks: () => void;
  }
}

/** A browser that counts what it is asked for, and refuses notifications. */
function stub(): void {
  const asked = { locks: 0, released: 0, tones: 0, vibrations: 0, permissions: 0 };
  let drops: (() => void)[] = [];
  const request = async () => {
    asked.locks += 1;
    const listeners: (() => void)[] = [];
    const release = async () => {
      asked.released += 1;
      for (const listen of listeners) listen();
    };
    drops.push(() => void release());
    return { release, addEventListener: (_: string, listen: () => void) => listeners.push(listen) };
  };
  Object.defineProperty(navigator, 'wakeLock', { value: { request } });
  Object.defineProperty(navigator, 'vibrate', {
    value: () => {
      asked.vibrations += 1;
      return true;
    },
  });
  const node = () => ({
    frequency: { value: 0 },
    gain: { setValueAtTime() {}, exponentialRampToValueAtTime() {} },
    connect: (next: unknown) => next,
    start: () => {
      asked.tones += 1;
    },
    stop() {},
  });
  const audio = { state: 'running', currentTime: 0, createOscillator: node, createGain: node };
  Object.assign(window, {
    asked,
    dropLocks: () => {
      for (const drop of drops) drop();
      drops = [];
    },
    AudioContext: class {
      constructor() {
        Object.assign(this, audio);
      }
    },
    Notification: Object.assign(() => {}, {
      permission: 'default',
      requestPermission: async () => {
        asked.permissions += 1;
        return 'denied';
      },
    }),
  });
}

const asked = (page: Page) => page.evaluate(() => window.asked);
const row = (page: Page, text: string) => page.locator('.clock', { hasText: text });
const turn = (page: Page, name: string) => page.getByRole('checkbox', { name }).click();

describe('the clocks', () => {
  it('count a cooling limit down by the wall, call at their marks, outlive a reload, and stop with the chill', async () => {
    await using visit = await openPage('/404.html', { width: 320, height: 640, timezone: 'Europe/Paris' });
    const { page } = visit;
    await page.addInitScript(stub);
    await page.clock.install({ time: '2026-11-27T11:00:00Z' });
    await page.goto(`${CHILL}#new`);
    await awake(page);
    await page.getByLabel('Whose rule on cooling').selectOption('us-food-code');
    await page.getByRole('button', { name: 'Out of the heat: now' }).click();
    // FDA Food Code 2022, 3-501.14(A)(1): 57 °C to 21 °C within 2 hours. 11:00 UTC is 12:00 in Paris.
    const limit = row(page, 'Core at 70');
    await limit.waitFor();
    expect(await limit.textContent()).toMatch(/^(2 h|1 h 59 min) left.*by 14:00\. It may run since 12:00/);
    expect(await sidewaysScrollPx(page)).toBe(0);

    await page.getByText('How it calls').click();
    expect((await asked(page)).permissions).toBe(0);
    for (const name of [
      'A sound',
      'A vibration',
      'Keep the screen awake while a clock runs',
      'A notification',
    ])
      await turn(page, name);
    await page.getByText('The browser does not allow notifications').waitFor();
    expect(await page.getByRole('checkbox', { name: 'A notification' }).isChecked()).toBe(false);
    await expect.poll(async () => (await asked(page)).locks).toBe(1);
    await page.evaluate(() => {
      window.dropLocks();
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await expect.poll(async () => (await asked(page)).locks).toBe(2);

    await page.getByLabel('What for').fill('Soak');
    await page.getByRole('button', { name: 'Start the clock' }).click();
    await page.getByText('Write how long it takes.').waitFor();
    await field(page, 'How long').fill('20');
    await page.getByRole('button', { name: 'Start the clock' }).click();
    await row(page, 'Soak').getByText('20 min more').waitFor();
    await page.getByRole('button', { name: 'Chill: begin now' }).click();
    await row(page, 'Chill').waitFor();
    await saved(page);

    const before = await asked(page);
    await page.clock.fastForward('01:31:00');
    await expect.poll(() => limit.textContent()).toMatch(/^2[78] min left.*by 14:00/);
    await expect.poll(() => row(page, 'Soak').textContent()).toMatch(/^time is up/);
    expect(await page.locator('.clock-called').last().textContent()).toMatch(/Soak: time is up|min left/);
    const then = await asked(page);
    expect(then.vibrations - before.vibrations).toBe(2);
    expect(then.tones - before.tones).toBe(6);

    await page.reload();
    await awake(page);
    await expect.poll(() => limit.textContent()).toMatch(/^2[5678] min left.*by 14:00/);
    expect((await asked(page)).vibrations).toBe(0);

    // Another worksheet has one line about it; the list has all of them.
    await page.goto('/worksheets/chill-budget/');
    await awake(page);
    await page.locator('.clock-bar', { hasText: 'time is up' }).waitFor();
    expect(await sidewaysScrollPx(page)).toBe(0);
    await page.getByRole('link', { name: /^All \d clocks$/ }).click();
    await page.getByRole('button', { name: 'Stop Soak' }).click();
    await expect.poll(() => row(page, 'Soak').count()).toBe(0);

    await page.clock.setSystemTime('2026-11-27T11:32:00Z');
    await page.getByText('The clock of this device was set back').waitFor();
    // Counted as if it had not been.
    expect(await limit.textContent()).toMatch(/^2\d min left/);
    await page.getByRole('button', { name: 'The clock is right now' }).click();
    await expect.poll(() => limit.textContent()).toMatch(/^1 h 2\d min left/);

    await page.getByRole('link', { name: /^Open/ }).first().click();
    await awake(page);
    await page.getByRole('button', { name: 'Chill: end now' }).click();
    await expect.poll(() => page.locator('.clock').count()).toBe(0);
    expect(await page.evaluate(() => localStorage.getItem('larderwright.clocks'))).toBeNull();
    await saved(page);
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    await page.goto('/worksheets/chill-budget/');
    await awake(page);
    expect(fetched.filter((url) => /clock-bar/.test(url))).toEqual([]);
    expect(visit.problems).toEqual([]);
  });
});

import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, inject } from 'vitest';

/** A page opened for one test, in a profile of its own: nothing is stored from an earlier one. */
export interface Visit extends AsyncDisposable {
  page: Page;
  context: BrowserContext;
  /**
   * What a healthy page never does, in words: errors and warnings on the console, uncaught errors, answers of
   * 400 and above, breaches of the content security policy, and requests to another host, which are also refused.
   */
  problems: string[];
}

export interface VisitOptions {
  width?: number;
  height?: number;
  colorScheme?: 'light' | 'dark';
  javaScript?: boolean;
  /** A phone: touch, and a screen that scales. */
  phone?: boolean;
  timezone?: string;
  /** The site may keep itself on the device, as it does for a reader. Else every page comes from the server. */
  keepsItself?: boolean;
  /** Where the site is served, if a test serves it itself. */
  origin?: string;
}

/** How long a test waits for something to show before it fails. Generous, for machines busy with other work. */
const PATIENCE_MS = 15_000;

let shared: Promise<Browser> | null = null;

function browser(): Promise<Browser> {
  shared ??= chromium.connect(inject('browserEndpoint'));
  return shared;
}

afterAll(async () => {
  await (await shared)?.close();
  shared = null;
});

function watch(page: Page, origin: string, problems: string[]): void {
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      problems.push(`console ${message.type()}: ${message.text()}`);
    }
  });
  page.on('pageerror', (error) => problems.push(`uncaught: ${error.message}`));
  page.on('response', (response) => {
    if (response.status() >= 400)
      problems.push(`${response.status()}: ${response.url().replace(origin, '')}`);
  });
}

/**
 * Opens a path of the built site and waits until its scripts have loaded.
 * Use with `await using visit = await openPage('/…/')`, which closes it again.
 */
export async function openPage(path: string, options: VisitOptions = {}): Promise<Visit> {
  const {
    width = 1280,
    height = 900,
    colorScheme = 'light',
    javaScript = true,
    phone = false,
    timezone,
    keepsItself = false,
    origin = inject('siteOrigin'),
  } = options;
  const context = await (await browser()).newContext({
    baseURL: origin,
    viewport: { width, height },
    colorScheme,
    javaScriptEnabled: javaScript,
    hasTouch: phone,
    isMobile: phone,
    locale: 'en-GB',
    ...(timezone === undefined ? {} : { timezoneId: timezone }),
  });
  context.setDefaultTimeout(PATIENCE_MS);
  const problems: string[] = [];
  // The browser itself knows no other host (setup.ts). To refuse it here would mean to stop every request and look at it.
  context.on('request', (request) => {
    if (new URL(request.url()).origin !== origin) problems.push(`request to another host: ${request.url()}`);
  });
  context.on('page', (page) => watch(page, origin, problems));
  if (!keepsItself)
    await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sample }) =>
      console.error(`against the policy: ${effectiveDirective} ${blockedURI} ${sample}`),
    );
  });
  const page = await context.newPage();
  await page.goto(path, { waitUntil: 'networkidle' });
  return { page, context, problems, [Symbol.asyncDispose]: () => context.close() };
}

/** How far a page can be scrolled sideways, px. A page that fits gives 0. */
export function sidewaysScrollPx(page: Page): Promise<number> {
  return page.evaluate(() => {
    const root = document.documentElement;
    return Math.max(root.scrollWidth, document.body.scrollWidth) - root.clientWidth;
  });
}

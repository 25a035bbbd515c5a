import { type Browser, chromium, type Page } from 'playwright-core';
import { DIST } from '../../site/tools/build.mjs';
import { serve } from '../../site/tools/serve.mjs';
import { findBrowser } from '../tools/find-browser.mjs';

/** The last build, served, and a browser to look at it. */
export interface OnSite {
  /** A page in a profile that has nothing of the site yet. */
  readonly newPage: () => Promise<Page>;
  readonly close: () => Promise<void>;
}

export async function onSite(): Promise<OnSite> {
  const site = await serve({ folder: DIST, port: 0, host: '127.0.0.1' });
  const browser: Browser = await chromium.launch({
    executablePath: await findBrowser(),
    chromiumSandbox: process.getuid?.() !== 0,
  });
  return {
    newPage: async () => {
      const context = await browser.newContext({
        baseURL: `http://127.0.0.1:${site.port}`,
        serviceWorkers: 'block',
      });
      return context.newPage();
    },
    close: async () => {
      await browser.close();
      await site.close();
    },
  };
}

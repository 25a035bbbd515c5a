import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { DIST } from '../../site/tools/build.mjs';
import { serve } from '../../site/tools/serve.mjs';
import { BROWSER_VARIABLE, findBrowser } from '../tools/find-browser.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Origin of the served site, without a slash at the end. */
    siteOrigin: string;
    /** Where the shared browser listens. */
    browserEndpoint: string;
  }
}

/** Serves dist/ and starts one browser for all test files. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const site = await serve({ folder: DIST, port: 0, host: '127.0.0.1' });
  const browser = await chromium.launchServer({
    executablePath: process.env[BROWSER_VARIABLE] ?? (await findBrowser()),
    // Chromium refuses to sandbox itself for root; elsewhere the sandbox stays.
    chromiumSandbox: process.getuid?.() !== 0,
    args: [
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      // A name of a kitchen's own network: no browser trusts it over plain http, as it does 127.0.0.1.
      // Beside it no request leaves the machine; that one was made is told by browser.ts.
      '--host-resolver-rules=MAP kitchen.test 127.0.0.1 , MAP * ~NOTFOUND , EXCLUDE 127.0.0.1',
    ],
  });
  project.provide('siteOrigin', `http://127.0.0.1:${site.port}`);
  project.provide('browserEndpoint', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await site.close();
  };
}

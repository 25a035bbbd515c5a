import { defineConfig } from 'vitest/config';

/** Tests of the built site, most of them in a real browser. `npm test -- browser` builds it and finds the browser first. */
export default defineConfig({
  test: {
    include: ['tests/site/**/*.test.ts', 'tests/content/built.test.ts'],
    globalSetup: ['tests/site/setup.ts'],
    testTimeout: 60_000,
    // The browser is a process of its own: more files at once than two only wait for it.
    maxWorkers: 2,
    maxConcurrency: 4,
    hookTimeout: 60_000,
    // A browser on a loaded machine can miss a moment: what is broken fails twice.
    retry: 1,
    // A page under load may take its time to answer; a wrong answer is wrong after ten seconds too.
    expect: { poll: { timeout: 10_000 } },
  },
});

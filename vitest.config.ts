import { defineConfig } from 'vitest/config';

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    // Tests of the finished site run after a build, with vitest.browser.config.ts.
    exclude: ['tests/site/**', 'tests/content/built.test.ts', 'node_modules/**'],
    testTimeout: 60_000,
    setupFiles: ['tests/tools/fixed-seed.ts'],
    // The default leaves a core idle, half of a small machine.
    maxWorkers: '100%',
  },
});

import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { BROWSER_VARIABLE, findBrowser } from './find-browser.mjs';

let top = '';

/** A program that ends with the given code, whatever it is asked. */
async function program(path: string, code: number): Promise<string> {
  const full = join(top, path);
  await mkdir(dirname(full), { recursive: true });
  await writeFile(full, `#!/bin/sh\nexit ${code}\n`, { mode: 0o755 });
  return full;
}

beforeEach(async () => {
  top = await mkdtemp(join(tmpdir(), 'larderwright-browser-'));
  vi.stubEnv(BROWSER_VARIABLE, '');
});

afterEach(async () => {
  vi.unstubAllEnvs();
  await rm(top, { recursive: true });
});

it('takes the browser the variable names before any other', async () => {
  const named = await program('named', 0);
  const onPath = await program('bin/google-chrome-stable', 0);
  vi.stubEnv('PATH', dirname(onPath));
  vi.stubEnv(BROWSER_VARIABLE, named);
  expect(await findBrowser()).toBe(named);
});

it('never takes another when the one named does not start', async () => {
  vi.stubEnv(BROWSER_VARIABLE, join(top, 'absent'));
  await expect(findBrowser()).rejects.toThrow('is not a browser that starts');
});

it('takes one on PATH, passing over a stub that does not start', async () => {
  const stub = await program('stub/google-chrome-stable', 1);
  const real = await program('bin/google-chrome-stable', 0);
  vi.stubEnv('PATH', `${dirname(stub)}:${dirname(real)}`);
  expect(await findBrowser()).toBe(real);
});

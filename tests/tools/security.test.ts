import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { headersFor, readHeaders, writeHeaders } from '../../site/tools/headers.mjs';
import { FRAMES, inlineOf, pagePolicy, workerPolicy } from '../../site/tools/policy.mjs';
import { baseFrom } from '../../site/tools/target.mjs';

const TOP = join(import.meta.dirname, '../..');
const read = (file: string) => readFileSync(join(TOP, file), 'utf8');

/** Ways from a text to markup or code. The policy of the pages refuses them; here they are not even written. */
const SINKS =
  /\b(?:innerHTML|outerHTML|insertAdjacentHTML|setHTMLUnsafe|parseHTMLUnsafe|srcdoc|createContextualFragment|dangerouslySetInnerHTML)\b|\bdocument\.write|\beval\s*\(|\bnew Function\b|\bsetAttribute\(\s*['"]on|javascript:/;

it('no source makes markup or code of a text', () => {
  const files = globSync('{site,content,worksheets,calc}/**/*.{ts,tsx,js,astro,mdx}', {
    cwd: TOP,
    exclude: ['**/node_modules/**'],
  });
  expect(files.length).toBeGreaterThan(500);
  expect(files.filter((file) => SINKS.test(read(file)))).toEqual([]);
  for (const bad of [
    'place.innerHTML = name',
    'eval (text)',
    'new Function(text)',
    "setAttribute('onclick', x)",
  ])
    expect(bad).toMatch(SINKS);
});

it('only one place makes workers', () => {
  const files = globSync('{site,worksheets}/**/*.{ts,tsx,js,astro}', { cwd: TOP });
  expect(files.filter((file) => /\bnew (?:Shared)?Worker\s*\(/.test(read(file)))).toEqual([
    'worksheets/parts/own-worker.ts',
  ]);
});

describe('dependencies', () => {
  const EXACT = /^(?:npm:(?:@[\w.-]+\/)?[\w.-]+@)?\d+\.\d+\.\d+$/;

  it.each(['package.json', 'calc/package.json'])('%s names exact versions', (file) => {
    const { dependencies = {}, devDependencies = {} } = JSON.parse(read(file));
    const asked = Object.entries<string>({ ...dependencies, ...devDependencies });
    expect(asked.length).toBeGreaterThan(2);
    // Our own workspace is whatever lies here.
    expect(
      asked.filter(([name, version]) => !name.startsWith('@larderwright/') && !EXACT.test(version)),
    ).toEqual([]);
    for (const range of ['^1.2.3', '~1.2.3', '1.2', '*', 'latest', '>=1.0.0'])
      expect(range).not.toMatch(EXACT);
  });

  it('the lock file can tell a changed package from the one that was read', () => {
    const { packages } = JSON.parse(read('package-lock.json')) as {
      packages: Record<string, { link?: boolean; integrity?: string; inBundle?: boolean }>;
    };
    const installed = Object.entries(packages).filter(([path]) => path.includes('node_modules/'));
    expect(installed.length).toBeGreaterThan(100);
    expect(
      installed
        .filter(
          ([, { link, inBundle, integrity }]) => !link && !inBundle && !/^sha512-/.test(integrity ?? ''),
        )
        .map(([path]) => path),
    ).toEqual([]);
  });
});

describe('the policy', () => {
  it('names scripts and styles of a page by what stands in them, and no others', () => {
    const inline = inlineOf(
      '<script>alert(1)</script><script src="/a.js"></script><script type="module">b()</script><style>p{}</style>',
    );
    // SHA-256 of `alert(1)` in base64, by openssl: derived.
    expect(inline.scripts).toContain("'sha256-bhHHL3z2vDgxUt0W3dWQOrprscmda2Y5pLsLg4GF+pI='");
    expect([inline.scripts.length, inline.styles.length]).toEqual([2, 1]);
  });

  it('opens no door it could do without', () => {
    const page = pagePolicy({ scripts: ["'sha256-x'"], styles: [] });
    for (const policy of [page, workerPolicy(), workerPolicy({ wasm: true })]) {
      expect(policy).toMatch(/^default-src 'none'; /);
      expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|\*|https?:|data:|blob:/);
      expect(policy).toContain("require-trusted-types-for 'script'");
    }
    expect(page).not.toContain('wasm');
    expect(workerPolicy()).not.toContain('wasm');
    expect(workerPolicy({ wasm: true })).toContain("'wasm-unsafe-eval'");
    // A policy in the page cannot say this: HTML Standard, content-security-policy state of http-equiv (from memory).
    expect(page).not.toContain(FRAMES);
  });
});

it('a headers file reads back as it was written, and a path gets what fits it', () => {
  const rules = [
    { path: '/*', headers: { 'X-Content-Type-Options': 'nosniff' } },
    {
      path: '/a/*',
      headers: { 'Cache-Control': 'no-cache', 'Content-Security-Policy': "default-src 'none'; x" },
    },
    { path: '/a', headers: { 'Cache-Control': 'max-age=1' } },
  ];
  expect(readHeaders(writeHeaders(rules))).toEqual(rules);
  expect(headersFor(rules, '/a/b')).toEqual({ ...rules[0]?.headers, ...rules[1]?.headers });
  expect(headersFor(rules, '/b')).toEqual(rules[0]?.headers);
});

it('BASE is a path with a slash at both ends, or refused', () => {
  const bases = [undefined, '', '/', 'larder', '/larder/', '/kitchen/larder'].map((BASE) =>
    baseFrom({ BASE }),
  );
  expect(bases).toEqual(['/', '/', '/', '/larder/', '/larder/', '/kitchen/larder/']);
  for (const BASE of ['../up', 'a b', 'https://site.example/'])
    expect(() => baseFrom({ BASE })).toThrow('BASE must be a path');
});

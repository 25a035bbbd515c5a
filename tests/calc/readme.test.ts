import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const TOP = join(import.meta.dirname, '../..');

it('runs unbuilt under Node, as its own README shows', () => {
  const readme = readFileSync(join(TOP, 'calc/README.md'), 'utf8');
  const code = /```ts\n(.*?)```/s.exec(readme)?.[1] ?? '';
  const wanted = /console\.log\(.*\/\/ (.*)/.exec(code)?.[1];
  const file = join(TOP, 'tests/out/readme-example.ts');
  mkdirSync(join(TOP, 'tests/out'), { recursive: true });
  writeFileSync(file, code);
  // FSIS Directive 7620.3 (rev. 1995): 120 ppm × 2800 g ÷ 0.0625 = 5.376 g, derived; the scale shows tenths.
  expect(wanted).toBe('5.4');
  expect(execFileSync(process.execPath, [file], { encoding: 'utf8' }).trim()).toBe(wanted);
});

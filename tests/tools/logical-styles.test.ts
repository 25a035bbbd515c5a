import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { filesBelow } from '../../site/tools/files.mjs';
import { ROOT } from '../../site/tools/project.mjs';

/** A property or value that names a side of the screen instead of the start or end of a line. */
const SIDE =
  /(?:^|[\s;{])(?:(?:margin|padding|border|inset|scroll-margin|scroll-padding)-(?:left|right)(?:-\w+)?|border-(?:top|bottom)-(?:left|right)-radius|left|right)\s*:|(?:text-align|float|clear)\s*:\s*(?:left|right)\b/;

/** Lines that name a side. `@page` boxes lie on paper, whose sides are the printer's. */
function sides(css: string): string[] {
  const plain = css
    .replaceAll(/\/\*[\s\S]*?\*\//g, '')
    .replaceAll(/@page[^{]*\{(?:[^{}]|\{[^{}]*\})*\}/g, '');
  return plain.split('\n').filter((line) => SIDE.test(line));
}

it('finds what would not turn with the direction of writing', () => {
  const planted = [
    'p { margin-left: 1rem; }',
    'p {\n  right: 0;\n}',
    'p { text-align: left }',
    'p { float: right; }',
  ];
  for (const css of planted) expect(sides(css), css).toHaveLength(1);
  const fine =
    'p { margin-inline-start: 1rem; text-align: end; inset-inline-end: 0; }\n@page { margin-left: 9mm; }';
  expect(sides(fine)).toEqual([]);
});

it('the styles name the start and end of a line, never left and right', async () => {
  const paths = (await filesBelow('site')).filter((path) => /\.(css|astro)$/.test(path));
  expect(paths.filter((path) => path.endsWith('.css')).length).toBeGreaterThan(10);
  const found = paths.flatMap((path) => {
    const text = readFileSync(join(ROOT, path), 'utf8');
    const css = path.endsWith('.css')
      ? [text]
      : [...text.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, inner = '']) => inner);
    return css.flatMap(sides).map((line) => `${path}: ${line.trim()}`);
  });
  expect(found).toEqual([]);
});

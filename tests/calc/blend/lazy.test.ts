import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

it('the solver is loaded when a least-cost blend is asked for, by one call and no import at the top', () => {
  const files = readdirSync('calc', { recursive: true, encoding: 'utf8' }).filter(
    (path) => path.endsWith('.ts') && !path.includes('node_modules'),
  );
  const texts = files.map((path) => readFileSync(join('calc', path), 'utf8'));
  expect(texts.filter((text) => /from 'yalps'/.test(text))).toEqual([]);
  expect(texts.filter((text) => /await import\('yalps'\)/.test(text))).toHaveLength(1);
});

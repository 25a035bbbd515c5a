import { expect, it } from 'vitest';
import { impurities } from './impurities.mjs';

it.each([
  'const now = Date.now();',
  'new Date()',
  'new Date;',
  'Date()',
  'Math.random()',
  'Temporal.Now.instant()',
])('sees the impurity of %s', (code) => {
  expect(impurities(code)).toHaveLength(1);
});

it.each([
  'new Date(iso)',
  'Date.parse(text)',
  '// never Date.now()',
  '/* Math.random() */',
  'randomness',
  'chillDate()',
])('finds nothing wrong with %s', (code) => {
  expect(impurities(code)).toEqual([]);
});

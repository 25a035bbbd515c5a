import { expect, it } from 'vitest';
import { missingPackages } from '../../site/tools/install.mjs';

const wanted = {
  packages: {
    '': { version: '0.1.0' },
    calc: { version: '0.1.0' },
    'node_modules/@house/calc': { link: true },
    'node_modules/a': { version: '1.0.0', integrity: 'sha512-a' },
    'node_modules/other-platform': { version: '1.0.0', integrity: 'sha512-o', optional: true },
  },
};
const { '': _top, 'node_modules/other-platform': _other, ...complete } = wanted.packages;

it('misses nothing in a complete install, though optional packages of other platforms are absent', () => {
  expect(missingPackages(wanted, { packages: complete })).toEqual([]);
});

it('misses what is absent, of another version, of other content, or no longer a link', () => {
  expect(missingPackages(wanted, {})).toEqual(['calc', 'node_modules/@house/calc', 'node_modules/a']);
  for (const change of [
    { 'node_modules/a': { version: '1.0.1', integrity: 'sha512-a' } },
    { 'node_modules/a': { version: '1.0.0', integrity: 'sha512-b' } },
  ]) {
    expect(missingPackages(wanted, { packages: { ...complete, ...change } })).toEqual(['node_modules/a']);
  }
  expect(missingPackages(wanted, { packages: { ...complete, 'node_modules/@house/calc': {} } })).toEqual([
    'node_modules/@house/calc',
  ]);
});

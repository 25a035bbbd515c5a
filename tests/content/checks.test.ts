import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { CHECK_LISTS } from '../../content/checks/index.ts';

const TOP = join(import.meta.dirname, '../..');
const keptBy = readdirSync(join(TOP, 'tests/calc'), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.test.ts'))
  .flatMap((file) => [
    ...readFileSync(join(TOP, 'tests/calc', file), 'utf8').matchAll(/^listsItsChecks\('(.+)'\)/gm),
  ])
  .map(([, name]) => name);

it('every list of the page is kept by one test file, and every kept list stands on the page', () => {
  const files = readdirSync(join(TOP, 'content/checks'))
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.replace('.json', ''));
  expect(CHECK_LISTS.map(({ slug }) => slug).sort()).toEqual(files.sort());
  expect(keptBy.toSorted()).toEqual(files);
});

it('a check that is not held says why', () => {
  const silent = CHECK_LISTS.flatMap(({ checks }) => checks).filter(
    ({ within, note }) => within === null && !note,
  );
  expect(silent).toEqual([]);
});

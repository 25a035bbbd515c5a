import { cp, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wordFaults } from '../../site/tools/check-words.mjs';
import { ROOT } from '../../site/tools/project.mjs';
import { inPseudo } from './in-pseudo.ts';
import { writePseudo } from './pseudo.ts';

const WHOLE = join(ROOT, 'tests', 'out', 'words-whole');
const TORN = join(ROOT, 'tests', 'out', 'words-torn');

/** Rewrites one file of the torn language. */
async function tear(path: string, change: (text: string) => string): Promise<void> {
  const file = join(TORN, path);
  const text = await readFile(file, 'utf8');
  const torn = change(text);
  expect(torn).not.toBe(text);
  await writeFile(file, torn);
}

beforeAll(async () => {
  await writePseudo(WHOLE);
  await rm(TORN, { recursive: true, force: true });
  await cp(WHOLE, TORN, { recursive: true });
});

afterAll(() =>
  Promise.all([WHOLE, TORN].map((folder) => rm(folder, { recursive: true, force: true }))).then(
    () => undefined,
  ),
);

describe('the catalogue of interface words', () => {
  it('is satisfied by a language that says everything, text by text and sentence by sentence', async () => {
    expect(await wordFaults(WHOLE)).toEqual([]);
  });

  it('names every file in which a language is not whole', async () => {
    await tear('casings/Casings.ts', (text) => text.replace(/export const toSoak .*\n/, ''));
    await tear('casings/answers.ts', (text) =>
      text.replace(/export const leftOver .*/, 'export const leftOver = (grams: Date) => String(grams);'),
    );
    await tear('casings/blank-blocks.ts', (text) =>
      text.replace(/export const water .*/, 'export const water = 7;'),
    );
    await rm(join(TORN, 'crust/answers.ts'));
    const paths = ['casings/Casings.ts', 'casings/answers.ts', 'casings/blank-blocks.ts', 'crust/answers.ts'];
    const faults = await wordFaults(TORN, paths);
    expect(faults).toHaveLength(4);
    for (const path of paths)
      expect(
        faults.some((fault) => fault.includes(path)),
        path,
      ).toBe(true);
  });

  it('in the language nobody speaks stands in brackets and takes two fifths more room', () => {
    expect(inPseudo('Casing to soak')).toBe('⟦Caasiing too sooaak⟧');
    expect(inPseudo((grams: string) => `${grams} left over`)('12 g')).toBe('⟦12 g leeft ooveer⟧');
    expect(inPseudo([{ value: 'mass', label: 'By weight' }])).toEqual([
      { value: 'mass', label: '⟦Byy weeiight⟧' },
    ]);
    expect(inPseudo('mm · 3')).toBe('⟦mm · 3⟧');
  });
});

/**
 * `npm run words -- <folder>`: whether a folder is the whole catalogue in another language. Writes one type of the
 * English catalogue, `Catalogue`, and lets the compiler hold the folder against it.
 */
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT, run, say } from './project.mjs';
import { WORDS, wordFiles } from './words.mjs';

/**
 * What the folder lacks, line by line as the compiler says it; nothing when it is whole.
 * @param {string} folder
 * @param {readonly string[]} [only] some files of the catalogue instead of all
 * @returns {Promise<string[]>}
 */
export async function wordFaults(folder, only) {
  const desk = join(ROOT, 'tests', 'out', `words-${process.pid}-${Date.now()}`);
  /** @param {string} target */
  const from = (target) => relative(desk, target).replaceAll(sep, '/');
  const files = only ?? (await wordFiles());
  const text = [
    `import type { Like } from '${from(join(WORDS, 'catalogue.ts'))}';`,
    ...files.map((path, index) => `import * as own${index} from '${from(join(folder, path))}';`),
    'interface Catalogue {',
    ...files.map((path) => `  '${path}': Like<typeof import('${from(join(WORDS, path))}')>;`),
    '}',
    // One by one, so that every file at fault is named.
    ...files.map(
      (path, index) => `export const file${index}: Catalogue['${path}'] = own${index}; // ${path}`,
    ),
  ];
  await mkdir(desk, { recursive: true });
  try {
    await writeFile(join(desk, 'catalogue.ts'), `${text.join('\n')}\n`);
    const config = {
      extends: from(join(ROOT, 'tsconfig.json')),
      include: [],
      files: ['catalogue.ts'],
      compilerOptions: { rootDir: ROOT, noUnusedLocals: false },
    };
    await writeFile(join(desk, 'tsconfig.json'), JSON.stringify(config));
    const { code, stdout } = await run('tsc', ['--noEmit', '--pretty', 'false', '-p', desk], {
      capture: true,
    });
    if (code === 0) return [];
    const faults = stdout.split('\n').filter((line) => /error TS/.test(line));
    return faults.map((line) => {
      const at = Number(/catalogue\.ts\((\d+),/.exec(line)?.[1]);
      const path = /from '[^']*'|\/\/ (.*)$/.exec(text[at - 1] ?? '')?.[1];
      return path === undefined ? line : `${path}: ${line.replace(/^.*error TS/, 'error TS')}`;
    });
  } finally {
    await rm(desk, { recursive: true, force: true });
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const folder = process.argv[2];
  if (folder === undefined) throw new Error('Name the folder with the words of the other language.');
  const faults = await wordFaults(resolve(folder));
  for (const fault of faults) say(fault);
  say(faults.length === 0 ? 'The catalogue is whole.' : `${faults.length} faults.`);
  process.exitCode = faults.length === 0 ? 0 : 1;
}

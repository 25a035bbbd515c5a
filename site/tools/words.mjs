import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { ROOT } from './project.mjs';

/** The English catalogue of interface words. A language is a folder with the same files. */
export const WORDS = join(ROOT, 'worksheets', 'words');

/** Names the folder of another language to build in: `LARDERWRIGHT_WORDS=../words-de npm run build`. */
export const WORDS_VARIABLE = 'LARDERWRIGHT_WORDS';

/** Files of the folder that hold no words: the same in every language. */
const MACHINERY = new Set(['catalogue.ts', 'index.ts', 'plural.ts', 'slot.ts', 'wording.ts']);

/**
 * Every file of the English catalogue that a language must have, relative to it, slashes forward.
 * @returns {Promise<string[]>}
 */
export async function wordFiles() {
  const found = await readdir(WORDS, { recursive: true });
  return found
    .map((path) => path.replaceAll(sep, '/'))
    .filter((path) => path.endsWith('.ts') && !MACHINERY.has(path))
    .sort();
}

/**
 * Builds in another language: a file of the English catalogue is taken from `folder` where that has one too.
 * @param {string} folder
 * @returns {import('vite').Plugin}
 */
export function wordsFrom(folder) {
  return {
    name: 'larderwright-words',
    enforce: 'pre',
    async resolveId(source, importer, options) {
      // A language may lean on the English file it stands for.
      if (!/words\/|^\.\.?\/[\w-]+\.ts$/.test(source) || importer?.startsWith(folder)) return null;
      const found = await this.resolve(source, importer, { ...options, skipSelf: true });
      if (!found?.id.startsWith(WORDS + sep)) return found;
      const own = join(folder, relative(WORDS, found.id));
      return existsSync(own) ? { ...found, id: own } : found;
    },
  };
}

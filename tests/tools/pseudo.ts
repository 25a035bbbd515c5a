import { mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { WORDS, wordFiles } from '../../site/tools/words.mjs';

/** Writes the whole catalogue in that language into a folder, emptied first. */
export async function writePseudo(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  for (const path of await wordFiles()) {
    const english = join(WORDS, path);
    const own = join(folder, path);
    const from = (target: string) => relative(dirname(own), target).replaceAll('\\', '/');
    const names = Object.keys(await import(pathToFileURL(english).href));
    const lines = [
      `import * as english from '${from(english)}';`,
      `import { inPseudo } from '${from(join(import.meta.dirname, 'in-pseudo.ts'))}';`,
      ...names.map((name) =>
        name === 'LOCALE'
          ? 'export const LOCALE = english.LOCALE;'
          : `export const ${name} = inPseudo(english.${name});`,
      ),
    ];
    await mkdir(dirname(own), { recursive: true });
    await writeFile(own, `${lines.join('\n')}\n`);
  }
}

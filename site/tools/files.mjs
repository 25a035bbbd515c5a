import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { ROOT } from './project.mjs';

/**
 * Every file below a folder of the repository, installed packages left out.
 * @param {string} folder relative to the top
 * @returns {Promise<string[]>} paths relative to the top, slashes forward
 */
export async function filesBelow(folder) {
  const entries = await readdir(join(ROOT, folder), { withFileTypes: true });
  const lists = await Promise.all(
    entries
      .filter((entry) => entry.name !== 'node_modules')
      .map((entry) => {
        const path = `${folder}/${entry.name}`;
        return entry.isDirectory() ? filesBelow(path) : [path];
      }),
  );
  return lists.flat();
}

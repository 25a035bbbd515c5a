import { createHash } from 'node:crypto';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { filesBelow } from './files.mjs';
import { PlainError, ROOT, run, say } from './project.mjs';
import { baseFrom } from './target.mjs';

/** Where the finished site lies. */
export const DIST = join(ROOT, 'dist');

/** Kept inside dist, which every build empties first: a stale mark cannot outlive its build. */
const MARK = join(DIST, '.built-from');

const INPUT_FOLDERS = ['calc', 'content', 'site', 'worksheets'];
const INPUT_FILES = ['astro.config.mjs', 'package.json', 'package-lock.json', 'tsconfig.json'];

/** One hash over where the site will stand and the names and bytes of everything a build reads. */
async function inputsHash() {
  const lists = await Promise.all(INPUT_FOLDERS.map(filesBelow));
  const hash = createHash('sha256').update(`${baseFrom(process.env)}\0`);
  for (const path of [...INPUT_FILES, ...lists.flat()].sort()) {
    const bytes = await readFile(join(ROOT, path));
    hash.update(`${path}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}

/**
 * Builds dist/ through npm, so that the pinned Node runs the build.
 * @param {{ timeLimitMin?: number }} [options]
 * @returns {Promise<boolean>} whether it worked
 */
export async function build(options = {}) {
  const before = await inputsHash();
  await rm(MARK, { force: true });
  const { code } = await run('npm', ['run', '--silent', 'build'], options);
  // Inputs edited while the build ran leave no mark, so the next start builds again.
  if (code === 0 && (await inputsHash()) === before) await writeFile(MARK, before);
  return code === 0;
}

/** Builds only when something a build reads differs from what dist/ was built from. */
export async function ensureBuilt() {
  const mark = await readFile(MARK, 'utf8').catch(() => null);
  if (mark !== null && mark === (await inputsHash())) return;
  say('Building the site …');
  if (!(await build())) throw new PlainError('The build failed: its own message stands above.');
}

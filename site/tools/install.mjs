import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PlainError, ROOT, run, say } from './project.mjs';

/** The oldest Node the pinned tools run on. */
const OLDEST_TOOL_NODE = [22, 18];

/**
 * @typedef {{ version?: string, integrity?: string, link?: boolean, optional?: boolean, devOptional?: boolean }} LockedPackage
 * @typedef {{ packages?: Record<string, LockedPackage> }} Lock
 */

/**
 * What an installed tree lacks of a lock: package folders that are absent or of another version.
 * Optional packages are left out, since most of them belong to other platforms.
 * @param {Lock} wanted package-lock.json
 * @param {Lock} installed node_modules/.package-lock.json, written by npm when an install is complete
 * @returns {string[]}
 */
export function missingPackages(wanted, installed) {
  const have = installed.packages ?? {};
  return Object.entries(wanted.packages ?? {})
    .filter(([folder, locked]) => {
      if (folder === '' || locked.optional || locked.devOptional) return false;
      const found = have[folder];
      if (!found) return true;
      return locked.link
        ? !found.link
        : found.version !== locked.version || found.integrity !== locked.integrity;
    })
    .map(([folder]) => folder);
}

/**
 * @param {string} path
 * @returns {Promise<Lock | null>} null when the file is absent or unreadable
 */
async function readLock(path) {
  try {
    return JSON.parse(await readFile(join(ROOT, path), 'utf8'));
  } catch {
    return null;
  }
}

/** Whether `node` as the tools see it is new enough. */
async function toolNodeIsRight() {
  const { code, stdout } = await run('node', ['--version'], { capture: true });
  const [major = 0, minor = 0] = stdout.trim().replace(/^v/, '').split('.').map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = OLDEST_TOOL_NODE;
  return code === 0 && (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor));
}

/**
 * Installs what package-lock.json names and node_modules lacks, the pinned Node included.
 * Does nothing, and says nothing, when all is there.
 * @returns {Promise<void>}
 */
export async function ensureInstalled() {
  const wanted = await readLock('package-lock.json');
  if (!wanted) throw new PlainError('package-lock.json is missing or is not JSON: nothing can be installed.');
  const installed = await readLock('node_modules/.package-lock.json');
  if (!installed || missingPackages(wanted, installed).length > 0) {
    say(
      installed
        ? 'Installing: package-lock.json has changed …'
        : 'Installing packages (once, about a minute) …',
    );
    // Many packages warn that they want a newer Node: they get it, by way of node_modules.
    const { code } = await run('npm', ['ci', '--include=dev', '--loglevel=error'], { path: 'outer' });
    if (code === 127) throw new PlainError('npm was not found. Install Node 20 or newer together with npm.');
    if (code !== 0) throw new PlainError('npm ci failed: its own message stands above.');
  }
  if (await toolNodeIsRight()) return;

  // The pinned Node is put in place by an install script, which a setting of npm may have kept from running.
  await run('npm', ['rebuild', 'node', 'esbuild', '--ignore-scripts=false'], { path: 'outer', quiet: true });
  if (await toolNodeIsRight()) return;
  throw new PlainError(
    `The tools need Node ${OLDEST_TOOL_NODE.join('.')} or newer, and the one in node_modules does not start.\n` +
      'Remove node_modules and try again; if npm is set to ignore install scripts, allow them for `node` and `esbuild`.',
  );
}

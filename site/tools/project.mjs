import { spawn } from 'node:child_process';
import { delimiter, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Top of the repository. */
export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

const MODULES = join(ROOT, 'node_modules');
const WINDOWS = process.platform === 'win32';

/**
 * Folders of PATH outside this project's node_modules: npm must not run on the
 * very Node it is about to replace.
 */
function outerPath() {
  return (process.env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => !`${folder}${sep}`.startsWith(`${MODULES}${sep}`))
    .join(delimiter);
}

/** PATH on which `node` and every tool are the ones package-lock.json pins. */
function toolPath() {
  return [join(MODULES, '.bin'), outerPath()].join(delimiter);
}

/**
 * How a command ended. `code` is null when it was stopped by a signal or by its time limit.
 * @typedef {{ code: number | null, stdout: string, timedOut: boolean }} Ended
 */

/**
 * @typedef {object} RunOptions
 * @property {'pinned' | 'outer'} [path] Which PATH to use; `pinned` unless told.
 * @property {Record<string, string>} [env] Added to the environment.
 * @property {boolean} [capture] Collect stdout instead of showing it.
 * @property {boolean} [quiet] Show nothing at all.
 * @property {number} [timeLimitMin] Stop the command and its children after so many minutes.
 */

/**
 * Runs a command from the top of the repository, without stdin. A command that cannot be started
 * ends with code 127. Ctrl-C reaches the child with us, as both stand in the same terminal group,
 * unless a time limit is set: then it has a group of its own and is stopped when we are.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<Ended>}
 */
export function run(command, args, options = {}) {
  const { path = 'pinned', env = {}, capture = false, quiet = false, timeLimitMin } = options;
  const ownGroup = timeLimitMin !== undefined && !WINDOWS;
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: ROOT,
      env: {
        ...process.env,
        ASTRO_TELEMETRY_DISABLED: '1',
        // Colour is for a terminal; some tools would send it into a log file too.
        ...(process.stdout.isTTY ? {} : { NO_COLOR: '1' }),
        PATH: path === 'outer' ? outerPath() : toolPath(),
        ...env,
      },
      stdio: ['ignore', quiet ? 'ignore' : capture ? 'pipe' : 'inherit', quiet ? 'ignore' : 'inherit'],
      shell: WINDOWS,
      detached: ownGroup,
    });
    const stop = () => {
      if (child.pid === undefined) return;
      try {
        process.kill(ownGroup ? -child.pid : child.pid, 'SIGKILL');
      } catch {
        // It has ended already.
      }
    };
    let stdout = '';
    let timedOut = false;
    child.stdout?.setEncoding('utf8').on('data', (text) => {
      stdout += text;
    });
    const timer =
      timeLimitMin === undefined
        ? undefined
        : setTimeout(() => {
            timedOut = true;
            stop();
          }, timeLimitMin * 60_000);
    // Ctrl-C and a stopped terminal end us by way of `exit`, which stops the child.
    const interrupted = () => process.exit(130);
    if (ownGroup) {
      process.once('exit', stop);
      process.once('SIGINT', interrupted);
      process.once('SIGTERM', interrupted);
    }
    /** @param {number | null} code */
    const end = (code) => {
      clearTimeout(timer);
      process.off('exit', stop);
      process.off('SIGINT', interrupted);
      process.off('SIGTERM', interrupted);
      resolve({ code, stdout, timedOut });
    };
    child.once('error', () => end(127));
    child.once('close', (code) => end(timedOut ? null : code));
  });
}

/** A reason to stop that a person can act on: shown without a stack. */
export class PlainError extends Error {}

/**
 * Runs the main part of a command; a PlainError becomes one message and exit code 1.
 * @param {() => Promise<void>} main
 */
export async function runMain(main) {
  try {
    await main();
  } catch (error) {
    if (!(error instanceof PlainError)) throw error;
    process.stderr.write(`\n${error.message}\n`);
    process.exitCode = 1;
  }
}

/** @param {string} line */
export function say(line) {
  process.stdout.write(`${line}\n`);
}

import { access, constants, readdir } from 'node:fs/promises';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';
import { PlainError, run, say } from '../../site/tools/project.mjs';

/** Names a path to the browser the tests use; outranks every search. */
export const BROWSER_VARIABLE = 'LARDERWRIGHT_BROWSER';

const NAMES = ['google-chrome-stable', 'google-chrome', 'chromium', 'chromium-browser', 'chrome'];

/** Where installers put a browser that is not on PATH. */
const USUAL_PLACES = {
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: ['ProgramFiles', 'ProgramFiles(x86)', 'LocalAppData'].flatMap((name) => {
    const base = process.env[name];
    return base
      ? [join(base, 'Google/Chrome/Application/chrome.exe'), join(base, 'Chromium/Application/chrome.exe')]
      : [];
  }),
  linux: ['/usr/bin', '/usr/local/bin', '/opt/google/chrome', '/snap/bin'].flatMap((folder) =>
    NAMES.map((name) => join(folder, name)),
  ),
};

/** Below a folder of Playwright's own downloads. */
const PLAYWRIGHT_BINARIES = [
  'chrome-linux/chrome',
  'chrome-linux64/chrome',
  'chrome-linux/headless_shell',
  'chrome-headless-shell-linux64/chrome-headless-shell',
  'chrome-mac/Chromium.app/Contents/MacOS/Chromium',
  'chrome-mac-arm64/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
  'chrome-mac-x64/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
  'chrome-win/chrome.exe',
  'chrome-win64/chrome.exe',
];

/** @param {string} path */
async function isProgram(path) {
  return access(path, constants.X_OK).then(
    () => true,
    () => false,
  );
}

/**
 * Whether a program starts: a package's stub that only says what to install does not count.
 * @param {string} path
 */
async function starts(path) {
  if (!(await isProgram(path))) return false;
  // Chrome on Windows opens a window instead of telling its version.
  if (process.platform === 'win32') return true;
  const { code } = await run(path, ['--version'], { quiet: true, timeLimitMin: 0.5 });
  return code === 0;
}

/**
 * @param {readonly string[]} paths
 * @returns {Promise<string | null>}
 */
async function firstThatStarts(paths) {
  for (const path of paths) if (await starts(path)) return path;
  return null;
}

/** Programs on PATH, then in the usual places. */
function installedPlaces() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  const onPath = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  const usual = Object.entries(USUAL_PLACES).find(([platform]) => platform === process.platform)?.[1] ?? [];
  return [...new Set([...onPath, ...usual])];
}

/** Browsers Playwright has downloaded, the newest revision first. */
async function playwrightPlaces() {
  const caches = {
    darwin: join(homedir(), 'Library/Caches/ms-playwright'),
    win32: join(homedir(), 'AppData/Local/ms-playwright'),
  };
  const usual = Object.entries(caches).find(([platform]) => platform === process.platform)?.[1];
  const folder = process.env.PLAYWRIGHT_BROWSERS_PATH || usual || join(homedir(), '.cache/ms-playwright');
  const entries = await readdir(folder).catch(() => []);
  const revision = (/** @type {string} */ name) => Number(/\d+$/.exec(name)?.[0] ?? 0);
  return entries
    .filter((name) => name.startsWith('chromium'))
    .sort((a, b) => revision(b) - revision(a))
    .flatMap((name) => PLAYWRIGHT_BINARIES.map((binary) => join(folder, name, binary)));
}

/** Debian's own package, where we may install it. */
async function installDebianPackage() {
  if (process.getuid?.() !== 0 || !(await isProgram('/usr/bin/apt-get'))) return null;
  say('No browser found: installing the Debian package chromium …');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const wait = ['-q', '-o', 'DPkg::Lock::Timeout=180'];
  await run('apt-get', ['update', ...wait], { env, capture: true, timeLimitMin: 5 });
  const packages = ['chromium', 'fonts-liberation', 'fonts-dejavu-core'];
  const { code } = await run('apt-get', ['install', '-y', '--no-install-recommends', ...wait, ...packages], {
    env,
    capture: true,
    timeLimitMin: 10,
  });
  return code === 0 ? firstThatStarts(['/usr/bin/chromium']) : null;
}

/**
 * A browser the tests can drive: the one named by the variable, an installed Chrome or Chromium,
 * one that Playwright has downloaded, or Debian's package, installed on the spot when we are root.
 * @returns {Promise<string>} path of the program
 * @throws {PlainError} saying what to install
 */
export async function findBrowser() {
  const named = process.env[BROWSER_VARIABLE];
  if (named) {
    if (await starts(named)) return named;
    throw new PlainError(`${BROWSER_VARIABLE}=${named} is not a browser that starts.`);
  }
  const found =
    (await firstThatStarts(installedPlaces())) ??
    (await firstThatStarts(await playwrightPlaces())) ??
    (await installDebianPackage());
  if (found) return found;
  throw new PlainError(
    'No browser found for the browser tests. Install Google Chrome or Chromium\n' +
      `(Debian, Ubuntu: apt-get install chromium), or set ${BROWSER_VARIABLE} to the path of one.`,
  );
}

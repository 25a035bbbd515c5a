import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { build, ensureBuilt } from '../../site/tools/build.mjs';
import { ROOT, run } from '../../site/tools/project.mjs';
import { countCommand, countVitest } from './count.mjs';
import { BROWSER_VARIABLE, findBrowser } from './find-browser.mjs';

/** No check may hang a run. Well above what the longest takes, so that a slow machine still reports. */
const TIME_LIMIT_MIN = 45;

/** @typedef {import('./count.mjs').Tally} Tally */

/**
 * One check. `part` is the word it is chosen by on the command line.
 * @typedef {{ part: string, title: string, run: () => Promise<Tally> }} Check
 */

/**
 * @param {string} part
 * @param {string} title
 * @param {string} command
 * @param {readonly string[]} args
 * @returns {Check}
 */
function command(part, title, command, args) {
  return {
    part,
    title,
    run: async () => countCommand(await run(command, args, { timeLimitMin: TIME_LIMIT_MIN })),
  };
}

/**
 * @param {string} name of the report
 * @param {string} config
 * @param {Record<string, string>} [env]
 * @returns {Promise<Tally>}
 */
async function vitest(name, config, env = {}) {
  const report = join(ROOT, 'tests', 'out', `${name}.json`);
  await rm(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const { code } = await run('vitest', ['run', '--config', config, ...reporters], {
    env,
    timeLimitMin: TIME_LIMIT_MIN,
  });
  const text = await readFile(report, 'utf8').catch(() => null);
  return countVitest(text === null ? null : JSON.parse(text), code);
}

/** Every check, in the order of a full run: what is quick and what others rest on comes first. */
export const CHECKS = /** @type {readonly Check[]} */ ([
  command('format', 'form and lint of code, styles and data', 'biome', ['check', '--error-on-warnings']),
  command('format', 'form of .astro files', 'prettier', ['--check', '--log-level', 'warn', '**/*.astro']),
  // Writes the types of the content collections, which the next check reads.
  command('types', 'types of pages', 'astro', ['check', '--minimumFailingSeverity', 'warning']),
  command('types', 'types of everything', 'tsc', ['--noEmit', '-p', 'tsconfig.json']),
  command('types', 'types of calc alone, without DOM or Node', 'tsc', [
    '-p',
    'tests/tools/calc.tsconfig.json',
  ]),
  command('imports', 'imports run downward', 'node', ['tests/tools/check-imports.mjs']),
  command('deadcode', 'no dead file, export or package', 'knip', ['--treat-config-hints-as-errors']),
  { part: 'unit', title: 'unit tests', run: () => vitest('unit', 'vitest.config.ts') },
  {
    part: 'build',
    title: 'production build',
    run: async () =>
      countCommand({
        code: (await build({ timeLimitMin: TIME_LIMIT_MIN })) ? 0 : 1,
        stdout: '',
        timedOut: false,
      }),
  },
  {
    part: 'browser',
    title: 'tests of the built site',
    run: async () => {
      await ensureBuilt();
      return vitest('browser', 'vitest.browser.config.ts', { [BROWSER_VARIABLE]: await findBrowser() });
    },
  },
]);

export const PARTS = [...new Set(CHECKS.map((check) => check.part))];

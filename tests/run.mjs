/**
 * `npm test`: installs what is missing, runs every check and ends with the line `N passed, M failed`.
 * `npm test -- unit browser` runs these parts only. Runs on Node 20 with nothing installed.
 */
import { ensureInstalled } from '../site/tools/install.mjs';
import { PlainError, say } from '../site/tools/project.mjs';
import { CHECKS, PARTS } from './tools/checks.mjs';
import { lastLine } from './tools/count.mjs';

/** @typedef {import('./tools/count.mjs').Tally} Tally */

/**
 * Runs one step; whatever stops it counts as one failure and is told, and the run goes on.
 * @param {() => Promise<Tally>} step
 * @returns {Promise<Tally>}
 */
async function attempt(step) {
  try {
    return await step();
  } catch (error) {
    const note =
      error instanceof PlainError ? error.message : String(error instanceof Error ? error.stack : error);
    return { passed: 0, failed: 1, notes: [note] };
  }
}

/**
 * @param {string} label
 * @param {Tally} tally
 */
function verdictLines(label, { passed, failed, notes }) {
  const counted = passed + failed > 1 ? ` (${passed} passed, ${failed} failed)` : '';
  return [
    `${failed === 0 ? '✓' : '✗'} ${label}${counted}`,
    ...notes.map((note) => `    ${note.replaceAll('\n', '\n    ')}`),
  ];
}

/** @returns {Promise<Tally[]>} */
async function main() {
  const asked = process.argv.slice(2);
  const unknown = asked.filter((part) => !PARTS.includes(part));
  if (unknown.length > 0)
    throw new PlainError(`No part is called ${unknown.join(', ')}. Parts: ${PARTS.join(', ')}.`);
  await ensureInstalled();

  const tallies = [];
  const summary = [];
  for (const { part, title, run } of CHECKS) {
    if (asked.length > 0 && !asked.includes(part)) continue;
    const label = `${part}: ${title}`;
    say(`\n── ${label}`);
    const started = performance.now();
    const tally = await attempt(run);
    const seconds = ((performance.now() - started) / 1000).toFixed(1);
    const lines = verdictLines(`${label}, ${seconds} s`, tally);
    say(lines.join('\n'));
    tallies.push(tally);
    summary.push(...lines);
  }
  say(`\n── Summary\n${summary.join('\n')}\n`);
  return tallies;
}

let tallies;
try {
  tallies = await main();
} catch (error) {
  say(error instanceof PlainError ? error.message : String(error instanceof Error ? error.stack : error));
  tallies = [{ passed: 0, failed: 1, notes: [] }];
}
process.exitCode = tallies.length > 0 && tallies.every((tally) => tally.failed === 0) ? 0 : 1;
say(lastLine(tallies));

/**
 * What a check came to. `notes` say in words what the numbers do not.
 * @typedef {{ passed: number, failed: number, notes: string[] }} Tally
 *
 * The parts read of the JSON report vitest writes.
 * @typedef {object} VitestReport
 * @property {{ name: string, status: string, assertionResults: { status: string, fullName: string }[] }[]} testResults
 */

/**
 * Counts a vitest report. A test that was skipped or left for later has shown nothing, so it counts as failed;
 * so does a file that could not be loaded, an error outside any test, and a run without tests.
 * @param {VitestReport | null} report null when vitest wrote none
 * @param {number | null} exitCode of vitest
 * @returns {Tally}
 */
export function countVitest(report, exitCode) {
  if (!report) return { passed: 0, failed: 1, notes: ['vitest ended without a report'] };
  const tests = report.testResults.flatMap((file) => file.assertionResults);
  const passed = tests.filter((test) => test.status === 'passed').length;
  const broken = tests.filter((test) => test.status === 'failed');
  const skipped = tests.filter((test) => test.status !== 'passed' && test.status !== 'failed');
  const unloaded = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  const notes = [
    ...broken.map((test) => `failed: ${test.fullName}`),
    ...skipped.map((test) => `${test.status}: ${test.fullName}`),
    ...unloaded.map((file) => `could not be run: ${file.name}`),
  ];
  let failed = notes.length;
  if (tests.length === 0) {
    failed += 1;
    notes.push('no test ran');
  } else if (failed === 0 && exitCode !== 0) {
    failed += 1;
    notes.push('vitest reported an error outside its tests');
  }
  return { passed, failed, notes };
}

/**
 * Counts a command that is one check: it passed when it ended by itself with code 0.
 * @param {import('../../site/tools/project.mjs').Ended} ended
 * @returns {Tally}
 */
export function countCommand({ code, timedOut }) {
  if (code === 0) return { passed: 1, failed: 0, notes: [] };
  const note = timedOut
    ? 'stopped: it did not finish in time'
    : code === 127
      ? 'could not be started'
      : `exit code ${code}`;
  return { passed: 0, failed: 1, notes: [note] };
}

/**
 * The very last line of a run.
 * @param {readonly Tally[]} tallies
 */
export function lastLine(tallies) {
  const sum = (/** @type {'passed' | 'failed'} */ key) =>
    tallies.reduce((total, tally) => total + tally[key], 0);
  return `${sum('passed')} passed, ${sum('failed')} failed`;
}

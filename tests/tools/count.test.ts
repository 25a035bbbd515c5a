import { describe, expect, it } from 'vitest';
import { countCommand, countVitest, lastLine } from './count.mjs';

function report(...statuses: string[]) {
  const assertionResults = statuses.map((status, index) => ({ status, fullName: `test ${index}` }));
  return {
    testResults: [
      { name: 'a.test.ts', status: statuses.includes('failed') ? 'failed' : 'passed', assertionResults },
    ],
  };
}

describe('countVitest', () => {
  it('counts what passed and what failed', () => {
    expect(countVitest(report('passed', 'passed', 'failed'), 1)).toEqual({
      passed: 2,
      failed: 1,
      notes: ['failed: test 2'],
    });
  });

  it('counts a skipped or postponed test as failed: it has shown nothing', () => {
    expect(countVitest(report('passed', 'skipped', 'todo'), 0)).toMatchObject({ passed: 1, failed: 2 });
  });

  it('counts a file that could not be loaded as one failure', () => {
    const broken = { name: 'b.test.ts', status: 'failed', assertionResults: [] };
    expect(countVitest({ testResults: [...report('passed').testResults, broken] }, 1)).toEqual({
      passed: 1,
      failed: 1,
      notes: ['could not be run: b.test.ts'],
    });
  });

  it('fails a run without tests, without a report, or with an error outside its tests', () => {
    expect(countVitest({ testResults: [] }, 0)).toMatchObject({ passed: 0, failed: 1 });
    expect(countVitest(null, 0)).toMatchObject({ passed: 0, failed: 1 });
    expect(countVitest(report('passed'), 1)).toMatchObject({ passed: 1, failed: 1 });
    expect(countVitest(report('passed'), null)).toMatchObject({ passed: 1, failed: 1 });
  });
});

describe('countCommand', () => {
  it('passes exit code 0 only', () => {
    expect(countCommand({ code: 0, stdout: '', timedOut: false })).toMatchObject({ passed: 1, failed: 0 });
    for (const code of [1, 127, null]) {
      expect(countCommand({ code, stdout: '', timedOut: code === null })).toMatchObject({
        passed: 0,
        failed: 1,
      });
    }
  });
});

describe('lastLine', () => {
  it('adds all up', () => {
    const tallies = [
      { passed: 2, failed: 0, notes: [] },
      { passed: 1, failed: 3, notes: [] },
    ];
    expect(lastLine(tallies)).toBe('3 passed, 3 failed');
    expect(lastLine([])).toBe('0 passed, 0 failed');
  });
});

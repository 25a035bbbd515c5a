import { DEFAULT_NUMBER_SCHEME, nextBatchNumber, schemeProblem } from '@larderwright/calc/batch';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const DAY = '2026-05-05';

describe('the next batch number', () => {
  it.each([
    [DEFAULT_NUMBER_SCHEME, [], '20260505-A'],
    [DEFAULT_NUMBER_SCHEME, ['20260505-A', '20260504-C'], '20260505-B'],
    [DEFAULT_NUMBER_SCHEME, ['20260505-Z'], '20260505-AA'],
    [DEFAULT_NUMBER_SCHEME, ['20260505-AZ', '20260505-B'], '20260505-BA'],
    ['T{YY}/{NNN}', ['T26/041', 'T25/900', 'T26/7', 'other'], 'T26/042'],
    ['{NNNN}', ['9999'], '10000'],
    // 5 May is the 125th day of 2026: 31 + 28 + 31 + 30 + 5.
    ['{YY}{DDD}.{N}', [], '26125.1'],
    ['{A} of {DD}.{MM}.', [' A of 05.05. '], 'B of 05.05.'],
  ] as const)('by %s after %j is %s', (scheme, taken, wanted) => {
    expect(nextBatchNumber(scheme, DAY, taken)).toBe(wanted);
  });

  it('is never one that is taken, however often it is asked for', () => {
    const scheme = fc.constantFrom(DEFAULT_NUMBER_SCHEME, '{NN}', 'K-{YYYY}-{N}', '{MM}{A}x');
    fc.assert(
      fc.property(scheme, fc.integer({ min: 1, max: 80 }), fc.array(fc.string()), (each, times, odd) => {
        const taken = [...odd];
        for (let count = 0; count < times; count += 1) {
          const next = nextBatchNumber(each, DAY, taken);
          expect(taken).not.toContain(next);
          taken.push(next);
        }
      }),
    );
  });
});

describe('a scheme', () => {
  it.each([
    ['{YYYY}', 'no-counter', ''],
    ['plain', 'no-counter', ''],
    ['{A}{N}', 'two-counters', ''],
    ['{A}{week}', 'unknown-part', 'week'],
    ['{A}{', 'open-brace', ''],
    [`{A}${'x'.repeat(60)}`, 'too-long', ''],
  ])('%s is refused: %s', (scheme, problem, part) => {
    expect(schemeProblem(scheme)).toEqual({ problem, part });
    expect(() => nextBatchNumber(scheme, DAY, [])).toThrow(/Not a scheme/);
  });

  it('that ships is sound', () => {
    expect(schemeProblem(DEFAULT_NUMBER_SCHEME)).toBeNull();
  });
});

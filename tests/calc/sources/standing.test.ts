import { BUILT_STANDING, laterStanding, readStanding, withdrawalsFor } from '@larderwright/calc/sources';
import { describe, expect, it } from 'vitest';

// House rules all: the list is ours, and no standard says how to write it.

const WITHDRAWAL = {
  stage: 'cook',
  ruleSetId: 'a-set',
  from: '2027-01-01',
  reason: 'The table was replaced.',
};
const list = (withdrawn: unknown, issued = '2027-01-01') => ({ issued, withdrawn });

describe('a list of withdrawn limits', () => {
  it('is read whole', () => {
    expect(readStanding(list([WITHDRAWAL]))).toEqual(list([WITHDRAWAL]));
    expect(readStanding(BUILT_STANDING)).toEqual(BUILT_STANDING);
  });

  it('is refused where any of it cannot be read, lest a withdrawal be lost', () => {
    const bad = [
      ...[null, 'text', [], {}, list('none'), { withdrawn: [] }, list([], 'soon'), list([null])],
      ...[
        { stage: 'other' },
        { ruleSetId: '' },
        { from: '1 January' },
        { reason: '' },
        { reason: 'x'.repeat(500) },
      ].map((part) => list([WITHDRAWAL, { ...WITHDRAWAL, ...part }])),
      list(Array.from({ length: 201 }, () => WITHDRAWAL)),
    ];
    for (const each of bad) expect(readStanding(each)).toBeNull();
  });

  it('gives way to a later one and never to an older, so that a stale copy takes nothing back', () => {
    const older = { issued: '2027-01-01', withdrawn: [] };
    const newer = { issued: '2027-01-02T08:00:00Z', withdrawn: [] };
    expect(laterStanding(older, newer)).toBe(newer);
    expect(laterStanding(newer, older)).toBe(newer);
  });

  it('touches a batch through the rule set it is judged by, of that stage alone', () => {
    const batch = (cook: string | null, cool: string | null) => ({
      cure: { ruleSetId: null },
      process: { cookRuleSetId: cook, coolRuleSetId: cool },
    });
    const withdrawn = readStanding(list([WITHDRAWAL]))?.withdrawn ?? [];
    expect(withdrawalsFor(batch('a-set', null), withdrawn)).toEqual([WITHDRAWAL]);
    expect(withdrawalsFor(batch(null, 'a-set'), withdrawn)).toEqual([]);
    expect(withdrawalsFor(batch(null, null), withdrawn)).toEqual([]);
  });
});

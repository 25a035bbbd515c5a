import type { Batch } from '@larderwright/calc/batch';
import { openShare, shareText } from '@larderwright/calc/exchange';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { newId, newRecordId } from '../../../worksheets/state/clock.ts';

/** The same batch with ids as rows get them when they are typed, in place of the short ones of a demo. */
function asTyped(demo: Batch): Batch {
  const ids = new Map<string, string>();
  const fresh = (id: string) => {
    const known = ids.get(id) ?? newId();
    ids.set(id, known);
    return known;
  };
  const row = <T extends { id: string }>(each: T): T => ({ ...each, id: fresh(each.id) });
  const { formula, mould, process } = demo;
  return {
    ...demo,
    id: newRecordId(),
    formula: { ...formula, lines: formula.lines.map(row) },
    mould: { ...mould, moulds: mould.moulds.map(row) },
    process: {
      ...process,
      steps: process.steps.map(row),
      logs: process.logs.map((log) => ({
        ...row(log),
        mouldId: log.mouldId === null ? null : fresh(log.mouldId),
        readings: log.readings.map(row),
      })),
    },
  };
}

describe('ids of rows', () => {
  it('never come twice, and begin with a letter', () => {
    const ids = Array.from({ length: 5000 }, newId);
    expect(new Set(ids).size).toBe(5000);
    expect(ids.every((id) => /^[a-z][a-z\d]+$/.test(id))).toBe(true);
  });

  it.each(Object.entries(demos))('leave the link of %s, typed anew, under 2,000 characters', (_, demo) => {
    const typed = asTyped(demo);
    const text = shareText(typed);
    expect(text.length).toBeLessThanOrEqual(2_000); // house rule
    const opened = openShare(text);
    if (!opened.ok) throw new Error('not opened');
    expect(opened.batch.formula.lines.map(({ id }) => id)).toEqual(typed.formula.lines.map(({ id }) => id));
  });
});

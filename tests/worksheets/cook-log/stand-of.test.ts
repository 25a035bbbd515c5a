import { newProbeLog, newReading, newStep } from '@larderwright/calc/batch';
import { type CookFacts, cookStage } from '@larderwright/calc/lethality';
import type { ProcessSlice } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { standOf } from '../../../worksheets/cook-log/stand-of.ts';
import { holdUntilWords, probeStandWords, standLine } from '../../../worksheets/words/cook-stand.ts';

const NO_POULTRY: CookFacts = {
  hasPoultry: false,
  poultryKind: null,
  fatFraction: 0.25,
  comminuted: true,
  hasPorkLiver: false,
};

/** A cook judged by 70 °C for 2 minutes (FSA advice), probe ± 0.5 °C: it acts at 70.5 °C. */
function stand(readings: string, { error = '0.5', ended = null as string | null, second = '' } = {}) {
  const log = (id: string, text: string) => ({
    ...newProbeLog(id, null),
    offset: enteredEntry('0', 'dC'),
    error: enteredEntry(error, 'dC'),
    readings: text
      .split(',')
      .filter((each) => each.trim() !== '')
      .map((each, i) => {
        const [clock = '', core = ''] = each.trim().split(' ');
        const at = `2026-03-10T${clock.length === 5 ? `${clock}:00` : clock}Z`;
        return newReading(`${id}${i}`, at, core, 'C', null);
      }),
  });
  const process: ProcessSlice = {
    cookRuleSetId: 'uk-advice',
    cookLimitId: 'uk-70C-2min',
    coolRuleSetId: null,
    steps: [{ ...newStep('s', 'cook'), startedAt: '2026-03-10T09:00:00Z', endedAt: ended }],
    logs: second === '' ? [log('a', readings)] : [log('a', readings), log('b', second)],
  };
  const { values, verdicts } = cookStage({ process }, NO_POULTRY);
  const [verdict] = verdicts;
  if (!verdict) throw new Error('not judged');
  return standOf(values, verdict);
}

describe('where the cook stands', () => {
  it('is coming up while the newest reading is below the action temperature', () => {
    const now = stand('10:00 63.5, 10:05 70.4');
    expect(now.kind).toBe('coming-up');
    expect(standLine(now, '')).toMatch(/keep cooking/);
    const [probe] = now.probes;
    // Derived: 70 + 0.5 − 70.4, rounded up.
    expect(probe && probeStandWords(probe, 0)).toBe('Last reading 70.4 °C at 10:05: 0.1 °C below 70.5 °C.');
  });

  it('holds until the first reading at or above plus the hold', () => {
    const now = stand('10:00 69.0, 10:05 70.5, 10:06 70.6');
    expect(now.kind).toBe('holding');
    expect(standLine(now, '')).toBe('Limit not complete: keep the probe in, do not chill.');
    // Derived: 10:05 and 2 min, of which 1 min is counted.
    expect(holdUntilWords(now, 0)).toBe('Hold until 10:07:00, 1 min more, and take a reading then.');
  });

  it('begins the hold again after a dip', () => {
    const now = stand('10:00 70.9, 10:01 70.2, 10:02 70.8');
    expect(now.kind).toBe('holding');
    expect(holdUntilWords(now, 0)).toMatch(/^Hold until 10:04, 2 min more/);
  });

  it('counts from the newest run, not from a longer one that broke off', () => {
    const now = stand('10:00:00 70.9, 10:01:30 70.9, 10:02:00 69.9, 10:03:00 70.8');
    expect(holdUntilWords(now, 0)).toMatch(/^Hold until 10:05/);
  });

  it('goes on holding after the heat was ended: carry-over counts while it is logged', () => {
    const now = stand('10:00 69.0, 10:05 70.6', { ended: '2026-03-10T10:05:00Z' });
    expect(now.state).toBe('fail');
    expect(now.kind).toBe('holding');
  });

  it('has failed when the heat is over and the core falls below', () => {
    const now = stand('10:00 70.6, 10:01 70.1', { ended: '2026-03-10T10:01:00Z' });
    expect(now.kind).toBe('failed');
    expect(standLine(now, '')).toMatch(/do not serve/);
  });

  it('is complete when the readings hold the limit, and says from when to when', () => {
    const now = stand('10:05 70.5, 10:07 70.6');
    expect(now.kind).toBe('complete');
    const [probe] = now.probes;
    expect(probe && probeStandWords(probe, 0)).toBe('Counted on readings from 10:05 to 10:07: 2 min.');
  });

  it('cannot be told without the probe’s error, and then no hold is counted down', () => {
    const now = stand('10:05 70.5, 10:06 74.0, 10:09 74', { error: '' });
    expect(now.kind).toBe('unknown');
    expect(now.untilMs).toBeNull();
  });

  it('asks for the probe’s error while the cook is open, instead of a hold it cannot know', () => {
    const now = stand('10:05 70.5', { error: '' });
    expect(now.kind).toBe('unchecked');
    expect(standLine(now, '')).toMatch(/offset or error is not entered/);
  });

  it('waits for the slower of two probes', () => {
    const both = stand('10:05 70.6', { second: '10:06 70.6' });
    expect(both.kind).toBe('holding');
    expect(holdUntilWords(both, 0)).toMatch(/^Hold until 10:08/);
    expect(stand('10:05 70.6', { second: '10:06 69.6' }).kind).toBe('coming-up');
    expect(stand('10:05 70.6, 10:07 70.6', { second: '10:06 70.6' }).kind).toBe('holding');
  });

  it('never shows a clock earlier than the hold ends', () => {
    const now = stand('10:05:20 70.5');
    // Derived: 10:07:20 is not over at 10:07.
    expect(holdUntilWords(now, 0)).toMatch(/^Hold until 10:08,/);
  });

  it('is not holding when the newest reading cannot be read', () => {
    expect(stand('10:05 70.6, 10:06 ERR').kind).not.toBe('holding');
  });
});

import { lookAtPaste, parseProbeLog } from '@larderwright/calc/probe-log';
import { describe, expect, it } from 'vitest';
import { NO_ANSWERS, pasteOptions, pasteSpan } from '../../../worksheets/readings/read-paste.ts';
import { pasteIssueWords, pasteWarningWords } from '../../../worksheets/words/paste.ts';

const NOW = Date.parse('2026-01-15T12:00:00Z');

describe('pasteOptions', () => {
  it('read a log on the clock of its own day, not of today', () => {
    // UK Summer Time Act 1972 and its orders: July is one hour ahead of UTC.
    expect(pasteOptions({ ...NO_ANSWERS, day: '2026-07-01' }, 'Europe/London', NOW).offset).toBe('+01:00');
    expect(pasteOptions(NO_ANSWERS, 'Europe/London', NOW).offset).toBe('+00:00');
    expect(pasteOptions(NO_ANSWERS, 'America/St_Johns', NOW).offset).toBe('-03:30');
  });

  it('say nothing that a person did not say', () => {
    expect(pasteOptions(NO_ANSWERS, 'UTC', NOW)).toEqual({
      unit: null,
      startsOn: null,
      offset: '+00:00',
      startsAt: null,
    });
  });
});

describe('the columns of a log', () => {
  const text = 'Time,Core °C,Bath °C\n10:00,20.5,75.1\n10:10,30.2,75.0\n10:20,40.8,75.2';

  it('are shown with their first cells where the core is not plain', () => {
    const options = pasteOptions(NO_ANSWERS, 'UTC', NOW);
    const asked = parseProbeLog(text, options);
    expect(asked.ok ? null : asked.issue.code).toBe('which-column');
    const look = lookAtPaste(text, options);
    expect(look).toMatchObject({ separator: ',', core: null });
    expect(look.columns.map(({ heading, cells }) => [heading, cells[0]])).toEqual([
      ['Time', '10:00'],
      ['Core °C', '20.5'],
      ['Bath °C', '75.1'],
    ]);
  });

  it('are read as a person says, in any order and with any parting', () => {
    const mixed = 'a;b;c;d\n71,5;7;03.04.2026;10:00\n71,9;8;03.04.2026;10:10\n72,0;9;03.04.2026;10:20';
    const answers = { ...NO_ANSWERS, unit: 'C', column: '0', timeColumn: '3', dateColumn: '2' } as const;
    const read = parseProbeLog(mixed, pasteOptions(answers, 'UTC', NOW));
    expect(read.ok && read.value.readings.map((row) => [row.at, row.temperature.text])).toEqual([
      ['2026-04-03T10:00:00+00:00', '71,5'],
      ['2026-04-03T10:10:00+00:00', '71,9'],
      ['2026-04-03T10:20:00+00:00', '72,0'],
    ]);
    const undated = parseProbeLog(mixed, pasteOptions({ ...answers, dateColumn: 'none' }, 'UTC', NOW));
    expect(undated.ok ? null : undated.issue.code).toBe('day-needed');
    const elapsed = parseProbeLog(
      mixed,
      pasteOptions({ ...answers, timeColumn: '1', startsAt: '2026-04-03T10:00:00Z' }, 'UTC', NOW),
    );
    expect(elapsed.ok && elapsed.value.readings[0]?.at).toBe('2026-04-03T10:07:00Z');
  });

  it('are parted as a person says', () => {
    const text = '10:00,5;71\n10:01,5;72\n10:02,5;73';
    const read = (separator: ';' | ',') =>
      lookAtPaste(text, pasteOptions({ ...NO_ANSWERS, separator }, 'UTC', NOW)).columns.map(
        ({ cells }) => cells[0],
      );
    expect(read(';')).toEqual(['10:00,5', '71']);
    expect(read(',')).toEqual(['10:00', '5;71']);
  });

  it('gives a column that reads what it names', () => {
    const options = pasteOptions({ ...NO_ANSWERS, day: '2026-03-03', column: '1' }, 'UTC', NOW);
    const read = parseProbeLog(text, options);
    if (!read.ok) throw new Error(read.issue.code);
    expect(read.value.readings.map((row) => row.temperature.text)).toEqual(['20.5', '30.2', '40.8']);
    expect(pasteSpan(read.value)?.minutes).toBe(20);
  });
});

describe('words for a pasted log', () => {
  it('say the line and what was found', () => {
    expect(pasteWarningWords({ code: 'temperature-not-read', line: 7, found: 'ERR' })).toContain('Line 7');
    expect(pasteWarningWords({ code: 'temperature-not-read', line: 7, found: 'ERR' })).toContain('ERR');
  });
  it('say what to do', () => {
    expect(pasteIssueWords({ code: 'day-needed', found: [] })).toMatch(/day of its first reading/);
    expect(pasteIssueWords({ code: 'unit-needed', found: [] })).toMatch(/°C or °F/);
  });
});

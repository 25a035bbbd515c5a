import { parseProbeLog } from '@larderwright/calc/probe-log';
import { describe, expect, it } from 'vitest';
import { coreColumns, NO_ANSWERS, pasteOptions, pasteSpan } from '../../../worksheets/readings/read-paste.ts';
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

describe('coreColumns', () => {
  const text = 'Time,Core °C,Bath °C\n10:00,20.5,75.1\n10:10,30.2,75.0\n10:20,40.8,75.2';

  it('names each column that can be the core', () => {
    const options = pasteOptions(NO_ANSWERS, 'UTC', NOW);
    const asked = parseProbeLog(text, options);
    expect(asked.ok ? null : asked.issue.code).toBe('which-column');
    const columns = coreColumns(parseProbeLog, text, options);
    expect(columns).toEqual([
      { index: 1, heading: 'Core °C' },
      { index: 2, heading: 'Bath °C' },
    ]);
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

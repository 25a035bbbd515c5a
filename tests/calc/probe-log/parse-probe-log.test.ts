import { MAX_PASTE, type PasteOptions, parseProbeLog } from '@larderwright/calc/probe-log';
import { instantMs } from '@larderwright/calc/process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const options: PasteOptions = { unit: 'C', startsOn: '2026-03-10', offset: '+01:00' };

function read(text: string, more: Partial<PasteOptions> = {}) {
  const result = parseProbeLog(text, { ...options, ...more });
  if (!result.ok) throw new Error(result.issue.code);
  return result.value;
}

function issueOf(text: string, more: Partial<PasteOptions> = {}) {
  const result = parseProbeLog(text, { ...options, ...more });
  return result.ok ? null : result.issue.code;
}

const pairs = (text: string, more: Partial<PasteOptions> = {}) =>
  read(text, more).readings.map(
    ({ at, temperature }) => `${at.slice(5, 19)} ${temperature.text} ${temperature.unit}`,
  );

const TWO = ['03-10T10:00:00 70.8 C', '03-10T10:02:00 71.1 C'];
const COMMA = ['03-10T10:00:00 70,8 C', '03-10T10:02:00 71,1 C'];

describe('parseProbeLog', () => {
  // Common practice, no source: ways cooks and loggers write the same two readings.
  it.each([
    ['spaces', '10:00 70.8\n10:02 71.1', TWO],
    ['tabs', '10:00\t70.8\n10:02\t71.1', TWO],
    ['commas', '10:00,70.8\n10:02,71.1', TWO],
    ['semicolons and decimal commas', '10:00;70,8\n10:02;71,1', COMMA],
    ['spaces and decimal commas', '10:00 70,8\n10:02 71,1', COMMA],
    ['bars', '10:00 | 70.8\n10:02 | 71.1', TWO],
    ['Windows line ends and blank lines', '\uFEFF10:00 70.8\r\n\r\n10:02 71.1\r\n', TWO],
    ['a heading', 'Time,Core °C\n10:00,70.8\n10:02,71.1', TWO],
    ['quotes', '"Time","Core, loaf 1"\n"10:00","70.8"\n"10:02","71.1"', TWO],
    ['a.m.', '10:00 a.m. 70.8\n10:02 am 71.1', TWO],
    ['an h for the hour', '10h00 70.8\n10h02 71.1', TWO],
    ['full stamps', '2026-03-10T10:00:00+01:00,70.8\n2026-03-10T09:02:00Z,71.1', TWO],
    ['stamps without a zone', '2026-03-10 10:00;70.8\n2026-03-10 10:02;71.1', TWO],
    ['day first', '10.03.2026 10:00;70.8\n10.03.2026 10:02;71.1', TWO],
    ['a date column', '2026-03-10,10:00:00,70.8\n2026-03-10,10:02:00,71.1', TWO],
    [
      'numbered lines',
      '#,Time,Temp\n1,10:00,70.8\n2,10:02,71.1\n3,10:04,71.2',
      [...TWO, '03-10T10:04:00 71.2 C'],
    ],
    ['a humidity column', 'Time;Temp;RH %\n10:00;70.8;55\n10:02;71.1;56', TWO],
    [
      'units in the figures',
      '10:00 70.8 °C\n10:02 71.1 °C',
      ['03-10T10:00:00 70.8°C C', '03-10T10:02:00 71.1°C C'],
    ],
  ])('reads %s', (_, text, expected) => {
    expect(pairs(text)).toEqual(expected);
  });

  it('reads minutes, hours and seconds since the start', () => {
    const startsAt = '2026-03-10T10:00:00+01:00';
    expect(pairs('0 70.8\n2 71.1', { startsAt })).toEqual(TWO);
    expect(pairs('elapsed s,core\n0,70.8\n120,71.1', { startsAt })).toEqual(TWO);
    expect(pairs('hours;core\n0;70.8\n0,5;71.1', { startsAt })).toEqual([TWO[0], '03-10T10:30:00 71.1 C']);
    expect(pairs('0:00 70.8\n0:02 71.1', { startsAt, times: 'elapsed' })).toEqual(TWO);
  });

  it('passes midnight, also over a long night gap', () => {
    expect(pairs('23:58 70.8\n00:01 71.1')).toEqual(['03-10T23:58:00 70.8 C', '03-11T00:01:00 71.1 C']);
    expect(pairs('19:50 12.5\n08:20 4.8')).toEqual(['03-10T19:50:00 12.5 C', '03-11T08:20:00 4.8 C']);
    expect(read('23:58 70.8\n00:01 71.1').warnings).toEqual([{ code: 'next-day', line: 2, found: '00:01' }]);
  });

  it('tells a clock that went back and keeps the time as written', () => {
    const log = read('10:00 70.8\n09:40 71.1\n10:02 71.2');
    expect(log.warnings).toEqual([{ code: 'clock-went-back', line: 2, found: '09:40' }]);
    expect(log.readings[1]?.at).toBe('2026-03-10T09:40:00+01:00');
  });

  it('turns a paste round that begins with the newest line', () => {
    const log = read('10:04 71.2\n10:02 71.1\n10:00 70.8');
    expect(log.readings.map((reading) => reading.temperature.text)).toEqual(['70.8', '71.1', '71.2']);
    expect(log.warnings[0]?.code).toBe('newest-first');
  });

  it('keeps blank and unreadable figures as readings', () => {
    const log = read('10:00 70.8\n10:01\n10:02 ---\n10:03 71.1');
    expect(log.readings.map((reading) => [reading.temperature.text, reading.readable])).toEqual([
      ['70.8', true],
      ['', false],
      ['---', false],
      ['71.1', true],
    ]);
    expect(log.warnings.map((warning) => warning.code)).toEqual([
      'temperature-blank',
      'temperature-not-read',
    ]);
  });

  it('tells a row whose time it cannot read', () => {
    expect(read('10:00,70.8\nlater,71.0\n10:02,71.1').warnings).toEqual([
      { code: 'row-not-read', line: 2, found: 'later 71.0' },
    ]);
  });

  it('takes the scale of a heading or a figure over nothing, never over the person', () => {
    expect(pairs('Time,Core (F)\n10:00,159.4', { unit: null })).toEqual(['03-10T10:00:00 159.4 F']);
    expect(pairs('10:00 159.4 °F', { unit: null })).toEqual(['03-10T10:00:00 159.4°F F']);
    expect(issueOf('Time,Core (F)\n10:00,159.4')).toBe('unit-conflict');
    expect(issueOf('10:00,159.4', { unit: null })).toBe('unit-needed');
  });

  it.each([
    ['', {}, 'empty'],
    [' \n \n', {}, 'empty'],
    ['the loaf was hot', {}, 'no-times'],
    ['10:00\n10:02', {}, 'no-temperatures'],
    ['10:00,71,5\n10:02,71,8', {}, 'decimal-comma-in-commas'],
    ['Time,Loaf 1,Loaf 2\n10:00,70.8,71.2\n10:02,71.1,71.4', {}, 'which-column'],
    ['3/4/2026 10:00,70.8\n3/4/2026 10:02,71.1', {}, 'date-order-needed'],
    ['10:00 70.8', { startsOn: null }, 'day-needed'],
    ['10:00 70.8', { startsOn: '2026-02-31' }, 'day-needed'],
    ['0 70.8\n2 71.1', {}, 'start-needed'],
    ['10:00 70.8', { offset: 'here' }, 'bad-zone'],
  ] as const)('sends %j back', (text, more, code) => {
    expect(issueOf(text, more)).toBe(code);
  });

  it('reads the column a person picks', () => {
    const text = 'Time,Loaf 1,Loaf 2\n10:00,70.8,71.2\n10:02,71.1,71.4';
    expect(pairs(text, { temperatureColumn: 2 })).toEqual(['03-10T10:00:00 71.2 C', '03-10T10:02:00 71.4 C']);
  });

  it('settles the order of dates by one that has only one reading', () => {
    expect(pairs('3/13/2026 10:00,70.8\n3/4/2026 10:02,71.1').at(0)).toBe('03-13T10:00:00 70.8 C');
    expect(pairs('4/3/2026 10:00,70.8', { dateOrder: 'day-month' })).toEqual(['03-04T10:00:00 70.8 C']);
  });

  it('refuses ten megabytes at once', () => {
    const text = '10:00 70.8\n'.repeat(1_000_000);
    expect(text.length).toBeGreaterThan(MAX_PASTE);
    const before = performance.now();
    expect(issueOf(text)).toBe('too-large');
    expect(performance.now() - before).toBeLessThan(1000);
  });

  it('never throws, whatever is pasted', () => {
    const line = fc.oneof(
      fc.string(),
      fc.constantFrom('10:00 70.8', '10:00,1,2', '"', '1/2/2026 10:00;3', '\t', '0 1', '9999:99 4'),
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 20 }), (lines) => {
        parseProbeLog(lines.join('\n'), options);
      }),
    );
  });

  it('takes a clock that only ever falls past midnight for a log that runs on, not for one upside down', () => {
    const log = read(['16:37 47.7', '00:00 40.5', '00:00 22.5'].join('\n'));
    expect(log.readings.map(({ at }) => at.slice(0, 16))).toEqual([
      '2026-03-10T16:37',
      '2026-03-11T00:00',
      '2026-03-11T00:00',
    ]);
    expect(log.warnings.map(({ code }) => code)).not.toContain('newest-first');
  });

  it('gives back every clock log it is handed, minute by minute', () => {
    const steps = fc.array(fc.integer({ min: 0, max: 600 }), { minLength: 1, maxLength: 40 });
    const figure = fc.integer({ min: -300, max: 1050 }).map((tenths) => (tenths / 10).toFixed(1));
    fc.assert(
      fc.property(steps, fc.infiniteStream(figure), (gaps, figures) => {
        let minutes = 600;
        const rows = gaps.map((gap) => {
          minutes += gap;
          const clock = `${Math.floor((minutes / 60) % 24)}`.padStart(2, '0');
          const { value } = figures.next();
          return { minutes, text: `${clock}:${`${minutes % 60}`.padStart(2, '0')} ${value}` };
        });
        const start = instantMs('2026-03-10T00:00:00+01:00') ?? 0;
        const back = read(rows.map((row) => row.text).join('\n')).readings;
        expect(back.map((reading) => ((instantMs(reading.at) ?? 0) - start) / 60_000)).toEqual(
          rows.map((row) => row.minutes),
        );
      }),
    );
  });
});

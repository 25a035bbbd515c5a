import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clockAt,
  dayWords,
  durationWords,
  isoInZone,
  latestMoment,
  momentOf,
  offsetAt,
  offsetOf,
  readClock,
  wallOf,
} from '../../../worksheets/parts/clock-text.ts';

const LONDON = 'Europe/London';

describe('readClock', () => {
  it.each([
    ['14:15', 14, 15, 0],
    ['1415', 14, 15, 0],
    ['915', 9, 15, 0],
    ['14.15', 14, 15, 0],
    ['14h15', 14, 15, 0],
    ['14:15:30', 14, 15, 30],
    ['2:15 pm', 14, 15, 0],
    ['12:05 am', 0, 5, 0],
    ['12 pm', 12, 0, 0],
    ['9', 9, 0, 0],
    [' 00:00 ', 0, 0, 0],
  ])('reads %s', (text, hour, minute, second) => {
    expect(readClock(text)).toEqual({ ok: true, hour, minute, second });
  });

  it.each(['24:00', '14:60', '99', '-1', '1e3', '14:15:99', '13 pm', 'noon', '<script>', '70.5 C', '12345'])(
    'refuses %s',
    (text) => {
      expect(readClock(text).ok).toBe(false);
    },
  );

  it('names blank and other digits apart from nonsense', () => {
    expect(readClock('  ')).toEqual({ ok: false, problem: 'blank' });
    expect(readClock('١٤:١٥')).toEqual({ ok: false, problem: 'foreign-digits' });
  });

  it('never throws and never gives a time outside the day', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readClock(text);
        if (read.ok) expect(read.hour * 3600 + read.minute * 60 + read.second).toBeLessThan(86_400);
      }),
    );
  });
});

describe('moments in a zone', () => {
  it('carry the offset of their own date', () => {
    // UK Summer Time Act 1972 and its orders: clocks go forward at 01:00 UTC on the last Sunday of March.
    expect(momentOf('2026-03-28', '14:15', LONDON, 0)).toEqual({
      ok: true,
      iso: '2026-03-28T14:15:00+00:00',
    });
    expect(momentOf('2026-03-29', '14:15', LONDON, 0)).toEqual({
      ok: true,
      iso: '2026-03-29T14:15:00+01:00',
    });
  });

  it('refuse a time that the clocks jumped over', () => {
    expect(momentOf('2026-03-29', '01:30', LONDON, 0)).toEqual({ ok: false, problem: 'no-such-time' });
  });

  it('take the nearer of the two when an hour comes twice', () => {
    // Clocks go back at 01:00 UTC on 25 October 2026: 01:30 happens at +01:00 and again at +00:00.
    const first = Date.parse('2026-10-25T01:10:00+01:00');
    const second = Date.parse('2026-10-25T01:40:00+00:00');
    expect(momentOf('2026-10-25', '01:30', LONDON, first)).toEqual({
      ok: true,
      iso: '2026-10-25T01:30:00+01:00',
    });
    expect(momentOf('2026-10-25', '01:30', LONDON, second)).toEqual({
      ok: true,
      iso: '2026-10-25T01:30:00+00:00',
    });
  });

  it('refuse a date that is none', () => {
    for (const date of ['2026-02-30', '', '03/03/2026', '2026-13-01']) {
      expect(momentOf(date, '10:00', LONDON, 0)).toEqual({ ok: false, problem: 'not-a-date' });
    }
  });

  it('work far east and west of Greenwich', () => {
    expect(momentOf('2026-07-01', '00:30', 'Pacific/Kiritimati', 0)).toEqual({
      ok: true,
      iso: '2026-07-01T00:30:00+14:00',
    });
    expect(momentOf('2026-07-01', '23:30', 'Pacific/Pago_Pago', 0)).toEqual({
      ok: true,
      iso: '2026-07-01T23:30:00-11:00',
    });
    expect(offsetAt(0, 'No/Such_Zone')).toBe(0);
  });

  it('come back from their text as they were written', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: Date.UTC(2020, 0, 1) / 1000, max: Date.UTC(2035, 0, 1) / 1000 }),
        fc.constantFrom('UTC', LONDON, 'Asia/Kolkata', 'America/St_Johns', 'Australia/Lord_Howe'),
        (second, zone) => {
          const iso = isoInZone(second * 1000, zone);
          expect(Date.parse(iso)).toBe(second * 1000);
          const wall = wallOf(iso);
          if (!wall) throw new Error('no wall clock');
          expect(momentOf(wall.date, wall.clock, zone, second * 1000)).toEqual({ ok: true, iso });
          expect(clockAt(second * 1000, offsetOf(iso))).toBe(wall.clock.slice(0, 5));
        },
      ),
    );
  });
});

describe('latestMoment', () => {
  const now = Date.parse('2026-03-04T00:10:00+00:00');
  it('is today when the clock has shown it today', () => {
    expect(latestMoment('00:05', LONDON, now)).toEqual({ ok: true, iso: '2026-03-04T00:05:00+00:00' });
  });
  it('is yesterday when today has not come to it', () => {
    expect(latestMoment('2350', LONDON, now)).toEqual({ ok: true, iso: '2026-03-03T23:50:00+00:00' });
  });
  it('lets the clock on the wall run five minutes ahead', () => {
    expect(latestMoment('00:14', LONDON, now)).toEqual({ ok: true, iso: '2026-03-04T00:14:00+00:00' });
  });
  it('says what is wrong with a text that is no time', () => {
    expect(latestMoment('soon', LONDON, now)).toEqual({ ok: false, problem: 'not-a-clock' });
  });
});

describe('durationWords', () => {
  it.each([
    [17 / 60, 'up', '17 s'],
    [1, 'up', '1 min'],
    [1.5, 'up', '90 s'],
    [2, 'up', '2 min'],
    [20.01, 'up', '21 min'],
    [20.99, 'down', '20 min'],
    [68, 'up', '1 h 08 min'],
    [120, 'up', '2 h'],
    [4319, 'up', '71 h 59 min'],
    [4321, 'up', '4 days'],
    [4321, 'down', '3 days'],
    [0, 'up', '0 s'],
    [-3, 'up', '0 s'],
  ] as const)('says %f min, rounded %s, as %s', (minutes, rounding, words) => {
    expect(durationWords(minutes, rounding)).toBe(words);
  });
  it('says nothing of what is no number', () => {
    expect(durationWords(Number.NaN, 'up')).toBe('');
    expect(durationWords(Number.POSITIVE_INFINITY, 'up')).toBe('');
  });
  it('does not round an exact length away', () => {
    // derived: 0.1 × 30 in floating point is a hair over 3.
    expect(durationWords(0.1 * 30, 'up')).toBe('3 min');
  });
});

describe('dates in words', () => {
  it('name the month, so that day and month cannot be swapped', () => {
    expect(dayWords('2026-03-04')).toBe('Wed 4 Mar');
    expect(dayWords('rubbish')).toBe('rubbish');
    expect(wallOf('rubbish')).toBeNull();
    expect(wallOf('2026-03-04T25:99:00Z')).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import {
  type Clock,
  type ClockKind,
  dueMark,
  hasRunOut,
  isClock,
  minutesLeft,
  minutesRun,
  passedMarks,
} from '../../../worksheets/clocks/clock.ts';
import { drawnAnew } from '../../../worksheets/clocks/clock-store.ts';
import { clockWords } from '../../../worksheets/words/clocks.ts';

const START = Date.parse('2026-11-27T12:20:00Z');
const at = (clock: string) => Date.parse(`2026-11-27T${clock}Z`);
const now = (clock: string) => ({ earlyMs: at(clock), lateMs: at(clock) });
const clock = (kind: ClockKind, part: Partial<Clock> = {}): Clock => ({
  id: 'b:limit',
  batchId: 'b',
  batch: 'Hare terrine',
  zone: 'Europe/Paris',
  kind,
  label: 'Core at 21 °C (69 °F) or colder',
  startedMs: START,
  endsMs: kind === 'stage' ? null : at('14:20:00'),
  maybe: false,
  told: [],
  ...part,
});

describe('a clock', () => {
  // derived: whole minutes of the time between, down for a limit, up for what must last.
  it('never shows more than is left of a limit, nor less than is left of a hold', () => {
    expect(minutesLeft(clock('limit'), now('14:05:01'))).toBe(14);
    expect(minutesLeft(clock('hold'), now('14:05:01'))).toBe(15);
    expect(minutesLeft(clock('limit'), now('14:19:30'))).toBe(0);
    expect(minutesRun(clock('stage'), now('12:21:59'))).toBe(1);
  });

  it('counts a limit from the later side of doubt, and what must last from the earlier', () => {
    const doubt = { earlyMs: at('13:00:00'), lateMs: at('14:30:00') };
    expect(hasRunOut(clock('limit'), doubt)).toBe(true);
    expect(hasRunOut(clock('hold'), doubt)).toBe(false);
    expect(minutesLeft(clock('timer'), doubt)).toBe(80);
    expect(minutesRun(clock('stage'), doubt)).toBe(40);
  });

  it('calls each mark once, and after a sleep only the last one that was passed', () => {
    expect(dueMark(clock('limit'), now('13:49:59'))).toBeNull();
    expect(dueMark(clock('limit'), now('13:50:00'))).toBe(30);
    expect(dueMark(clock('limit', { told: [30] }), now('13:55:00'))).toBeNull();
    expect(dueMark(clock('limit', { told: [30] }), now('14:16:00'))).toBe(5);
    expect(passedMarks(clock('limit'), now('14:16:00'))).toEqual([30, 15, 5]);
    expect(dueMark(clock('limit', { told: [30, 15, 5, 0] }), now('18:00:00'))).toBeNull();
    expect(dueMark(clock('stage'), now('18:00:00'))).toBeNull();
  });

  it('says by when in the zone of its batch, in the minute that has begun', () => {
    const words = clockWords(clock('limit', { endsMs: at('14:20:50') }), now('14:00:00'));
    // Paris is an hour ahead of UTC in November (IANA time zone database).
    expect(words.moments).toMatch(/^by 15:20\./);
    expect(words.state).toBe('20 min left');
    expect(clockWords(clock('hold', { endsMs: at('14:20:10') }), now('14:00:00')).moments).toMatch(
      /^until 15:21\./,
    );
  });

  it('does not move in the night the clocks go back', () => {
    // Summer time ends at 01:00 UTC on the last Sunday of October: Directive 2000/84/EC, article 3.
    const ends = Date.parse('2026-10-25T01:30:00Z');
    const night = clock('limit', { startedMs: Date.parse('2026-10-24T23:30:00Z'), endsMs: ends });
    const before = Date.parse('2026-10-25T00:50:00Z');
    const after = Date.parse('2026-10-25T01:10:00Z');
    expect(minutesLeft(night, { earlyMs: before, lateMs: before })).toBe(40);
    expect(minutesLeft(night, { earlyMs: after, lateMs: after })).toBe(20);
    expect(clockWords(night, { earlyMs: after, lateMs: after }).moments).toMatch(
      /^by 02:30\. Counted from 01:30/,
    );
  });

  it('that ran out proves nothing: it sends the hand to the log', () => {
    const words = clockWords(clock('limit'), now('14:20:00'));
    expect(words.state).toBe('time is up');
    expect(words.moments).toContain('Only a reading shows whether it was met');
  });

  it('is known from anything else that may lie on the device', () => {
    expect(isClock(JSON.parse(JSON.stringify(clock('limit'))))).toBe(true);
    for (const damaged of [
      null,
      7,
      [],
      {},
      { ...clock('limit'), endsMs: 'soon' },
      { ...clock('limit'), kind: 'verdict' },
    ])
      expect(isClock(damaged)).toBe(false);
  });
});

describe('clocks drawn anew from the record', () => {
  const timer = clock('timer', { id: 'own' });
  const elsewhere = clock('limit', { id: 'c:limit', batchId: 'c' });
  const told = clock('limit', { told: [30] });

  it('keep what was called out where the end is the same, and call again where it moved', () => {
    const same = drawnAnew([told], 'b', ['limit'], [clock('limit')]);
    expect(same).toEqual([told]);
    const moved = drawnAnew([told], 'b', ['limit'], [clock('limit', { endsMs: at('14:10:00') })]);
    expect(moved[0]?.told).toEqual([]);
  });

  it('leave alone those of other batches, other kinds and a person’s own', () => {
    expect(drawnAnew([timer, elsewhere, told], 'b', ['limit'], [])).toEqual([timer, elsewhere]);
  });
});

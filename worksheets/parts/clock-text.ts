/**
 * Clock times as a kitchen writes them. A moment of the batch is ISO 8601 with offset: the wall clock that
 * was read stands in the text itself, the instant follows from the offset.
 */
import * as say from '#words/parts/clock-text.ts';

const MINUTE_MS = 60_000;
const two = (n: number) => String(Math.floor(n)).padStart(2, '0');

/** What a typed clock time can be wrong in. */
export type ClockProblem = 'blank' | 'not-a-clock' | 'not-a-date' | 'no-such-time' | 'foreign-digits';

export type ClockRead =
  | { readonly ok: true; readonly hour: number; readonly minute: number; readonly second: number }
  | { readonly ok: false; readonly problem: ClockProblem };

const CLOCK = /^(\d{1,2})(?:[:.h\s]\s*(\d{1,2})(?:[:.]\s*(\d{1,2}))?|(\d{2}))?\s*(am|pm|a\.m\.|p\.m\.)?$/i;

/**
 * Reads `14:15`, `1415` (a number pad has no colon), `14.15`, `14h15`, `14:15:30`, `2:15 pm`, `9`.
 * A bare number is an hour only up to 23.
 */
export function readClock(text: string): ClockRead {
  const typed = text.trim();
  if (typed === '') return { ok: false, problem: 'blank' };
  if (/[\p{Nd}--[0-9]]/v.test(typed)) return { ok: false, problem: 'foreign-digits' };
  const padded = /^\d{3}$/.test(typed) ? `0${typed}` : typed;
  const found = CLOCK.exec(padded);
  if (!found) return { ok: false, problem: 'not-a-clock' };
  const [, hours = '', spaced, seconds, joined, half] = found;
  const minute = Number(spaced ?? joined ?? 0);
  const second = Number(seconds ?? 0);
  let hour = Number(hours);
  if (half) {
    if (hour < 1 || hour > 12) return { ok: false, problem: 'not-a-clock' };
    hour = (hour % 12) + (half.toLowerCase().startsWith('p') ? 12 : 0);
  }
  if (hour > 23 || minute > 59 || second > 59) return { ok: false, problem: 'not-a-clock' };
  return { ok: true, hour, minute, second };
}

/** Minutes a zone is ahead of UTC at an instant. An unknown zone counts as UTC. */
export function offsetAt(atMs: number, zone: string): number {
  let parts: Intl.DateTimeFormatPart[];
  try {
    parts = new Intl.DateTimeFormat('en-GB', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    }).formatToParts(atMs);
  } catch {
    return 0;
  }
  const part = (type: Intl.DateTimeFormatPartTypes) =>
    Number(parts.find((each) => each.type === type)?.value ?? 0);
  const wallMs = Date.UTC(
    part('year'),
    part('month') - 1,
    part('day'),
    part('hour'),
    part('minute'),
    part('second'),
  );
  return Math.round((wallMs - Math.floor(atMs / 1000) * 1000) / MINUTE_MS);
}

/** An instant as ISO 8601 on a clock `offsetMin` ahead of UTC. */
function isoWithOffset(atMs: number, offsetMin: number): string {
  const sign = offsetMin < 0 ? '-' : '+';
  const ahead = Math.abs(offsetMin);
  const wall = new Date(atMs + offsetMin * MINUTE_MS).toISOString().slice(0, 19);
  return `${wall}${sign}${two(ahead / 60)}:${two(ahead % 60)}`;
}

/** An instant as ISO 8601 on the wall clock of a zone. */
export function isoInZone(atMs: number, zone: string): string {
  return isoWithOffset(atMs, offsetAt(atMs, zone));
}

export type MomentRead =
  | { readonly ok: true; readonly iso: string }
  | { readonly ok: false; readonly problem: ClockProblem };

/**
 * The moment a clock shows a time on a date, in a zone. Where the clocks go back an hour comes twice; the
 * one nearest to `nearMs` is taken. Where they go forward an hour is missing: `no-such-time`.
 *
 * @param date `YYYY-MM-DD`
 */
export function momentOf(date: string, clockText: string, zone: string, nearMs: number): MomentRead {
  const clock = readClock(clockText);
  if (!clock.ok) return clock;
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!found) return { ok: false, problem: 'not-a-date' };
  const [, year, month, day] = found.map(Number);
  const wallMs = Date.UTC(year ?? 0, (month ?? 1) - 1, day, clock.hour, clock.minute, clock.second);
  if (!Number.isFinite(wallMs) || new Date(wallMs).toISOString().slice(0, 10) !== date) {
    return { ok: false, problem: 'not-a-date' };
  }
  const halfDay = 720 * MINUTE_MS;
  const aboutMs = wallMs - offsetAt(wallMs, zone) * MINUTE_MS;
  const offsets = new Set([offsetAt(aboutMs - halfDay, zone), offsetAt(aboutMs + halfDay, zone)]);
  const instants = [...offsets]
    .map((offsetMin) => ({ atMs: wallMs - offsetMin * MINUTE_MS, offsetMin }))
    .filter(({ atMs, offsetMin }) => offsetAt(atMs, zone) === offsetMin)
    .sort((a, b) => Math.abs(a.atMs - nearMs) - Math.abs(b.atMs - nearMs));
  const first = instants[0];
  return first
    ? { ok: true, iso: isoWithOffset(first.atMs, first.offsetMin) }
    : { ok: false, problem: 'no-such-time' };
}

/** A clock on the bench may run this far ahead of this device's, ms. */
const AHEAD_MS = 5 * MINUTE_MS;

/**
 * The latest moment the wall clock showed this time: just after midnight, 23:50 is yesterday's.
 *
 * @param nowMs the present moment
 */
export function latestMoment(clockText: string, zone: string, nowMs: number): MomentRead {
  for (const daysBack of [0, 1]) {
    const date = isoInZone(nowMs - daysBack * 1440 * MINUTE_MS, zone).slice(0, 10);
    const read = momentOf(date, clockText, zone, nowMs);
    if (!read.ok && read.problem !== 'no-such-time') return read;
    if (read.ok && Date.parse(read.iso) <= nowMs + AHEAD_MS) return read;
  }
  return { ok: false, problem: 'no-such-time' };
}

/** The wall clock that stands in a moment: date and time as they were read. Null for a damaged text. */
export function wallOf(iso: string): { date: string; clock: string } | null {
  const found = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})(?::(\d{2}))?/.exec(iso);
  if (!found || !Number.isFinite(Date.parse(iso))) return null;
  const [, date = '', hhmm = '', seconds = '00'] = found;
  return { date, clock: seconds === '00' ? hhmm : `${hhmm}:${seconds}` };
}

/** Minutes a moment's own clock is ahead of UTC; 0 when the text says nothing. */
export function offsetOf(iso: string): number {
  const found = /([+-])(\d{2}):(\d{2})$/.exec(iso);
  if (!found) return 0;
  const minutes = Number(found[2]) * 60 + Number(found[3]);
  return found[1] === '-' ? -minutes : minutes;
}

/** `14:15` of an instant on a clock `offsetMin` ahead of UTC. */
export function clockAt(atMs: number, offsetMin: number): string {
  const wall = new Date(atMs + offsetMin * MINUTE_MS);
  return Number.isFinite(wall.getTime()) ? `${two(wall.getUTCHours())}:${two(wall.getUTCMinutes())}` : '';
}

/** `YYYY-MM-DD` of an instant on a clock `offsetMin` ahead of UTC. */
export function dateAt(atMs: number, offsetMin: number): string {
  const wall = new Date(atMs + offsetMin * MINUTE_MS);
  return Number.isFinite(wall.getTime()) ? wall.toISOString().slice(0, 10) : '';
}

export { dayWords } from './day-words.ts';

/**
 * A length of time in words: `45 s`, `17 min`, `2 h`, `1 h 08 min`, `5 days`. Whole seconds below two minutes, else whole
 * minutes, rounded the way the caller names: up for what is still needed or was taken, down for what counts.
 */
export function durationWords(minutes: number, rounding: 'up' | 'down'): string {
  if (!Number.isFinite(minutes)) return '';
  const round = rounding === 'up' ? Math.ceil : Math.floor;
  // Milliseconds of an instant are exact; what remains beyond a millionth of a minute is floating point.
  const tidy = (value: number) => round(Math.round(value * 1e6) / 1e6);
  if (minutes < 2) {
    const seconds = tidy(Math.max(0, minutes) * 60);
    return seconds % 60 === 0 && seconds > 0 ? `${seconds / 60} min` : `${seconds} s`;
  }
  const whole = tidy(minutes);
  const hours = Math.floor(whole / 60);
  if (hours === 0) return `${whole} min`;
  if (hours >= 72) return say.days(round(minutes / 1440));
  return whole % 60 === 0 ? `${hours} h` : `${hours} h ${two(whole % 60)} min`;
}

import type { PastedLog, PasteOptions } from '@larderwright/calc/probe-log';
import { offsetAt } from '../parts/clock-text.ts';

/** What a person says about a log that the log does not say itself. Blank: not said. */
export interface PasteAnswers {
  unit: '' | 'C' | 'F';
  /** Day of the first reading, `YYYY-MM-DD`. */
  day: string;
  /** `''` lets the log decide. */
  times: '' | 'clock' | 'elapsed';
  elapsedUnit: '' | 's' | 'min' | 'h';
  startsAt: string | null;
  dateOrder: '' | 'day-month' | 'month-day';
  /** Columns from 0, as text. */
  column: string;
  timeColumn: string;
  /** `none`: no column holds a date. */
  dateColumn: string;
  separator: '' | NonNullable<PasteOptions['separator']>;
}

export const NO_ANSWERS: PasteAnswers = {
  unit: '',
  day: '',
  times: '',
  elapsedUnit: '',
  startsAt: null,
  dateOrder: '',
  column: '',
  timeColumn: '',
  dateColumn: '',
  separator: '',
};

const MINUTE_MS = 60_000;

function offsetText(offsetMin: number): string {
  const ahead = Math.abs(offsetMin);
  const two = (n: number) => String(Math.floor(n)).padStart(2, '0');
  return `${offsetMin < 0 ? '-' : '+'}${two(ahead / 60)}:${two(ahead % 60)}`;
}

/**
 * The answers as calc takes them. A log is read on one clock: the one that held at noon of its first day.
 *
 * @param nowMs the present moment, for a log whose day is not said
 */
export function pasteOptions(answers: PasteAnswers, zone: string, nowMs: number): PasteOptions {
  const noonMs = Date.parse(`${answers.day}T12:00:00Z`);
  const offsetMin = offsetAt(Number.isFinite(noonMs) ? noonMs : nowMs, zone);
  const chosen = (text: string) => (/^\d+$/.test(text) ? Number(text) : null);
  const core = chosen(answers.column);
  const time = chosen(answers.timeColumn);
  return {
    unit: answers.unit || null,
    startsOn: answers.day || null,
    offset: offsetText(offsetMin),
    startsAt: answers.startsAt,
    ...(answers.times ? { times: answers.times } : {}),
    ...(answers.elapsedUnit ? { elapsedUnit: answers.elapsedUnit } : {}),
    ...(answers.dateOrder ? { dateOrder: answers.dateOrder } : {}),
    ...(core === null ? {} : { temperatureColumn: core }),
    ...(time === null ? {} : { timeColumn: time }),
    ...(answers.dateColumn === '' ? {} : { dateColumn: chosen(answers.dateColumn) }),
    ...(answers.separator ? { separator: answers.separator } : {}),
  };
}

/** First and last moment and temperatures of a log that was read. */
export function pasteSpan(log: PastedLog): { fromIso: string; toIso: string; minutes: number } | null {
  const first = log.readings[0];
  const last = log.readings.at(-1);
  if (!first || !last) return null;
  return {
    fromIso: first.at,
    toIso: last.at,
    minutes: (Date.parse(last.at) - Date.parse(first.at)) / MINUTE_MS,
  };
}

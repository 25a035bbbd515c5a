import type { PastedLog, PasteOptions, parseProbeLog } from '@larderwright/calc/probe-log';
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
  /** Column of the core, from 0, as text. */
  column: string;
}

export const NO_ANSWERS: PasteAnswers = {
  unit: '',
  day: '',
  times: '',
  elapsedUnit: '',
  startsAt: null,
  dateOrder: '',
  column: '',
};

const MINUTE_MS = 60_000;
/** Lines enough to see how a log is built. */
const HEAD_LINES = 60;
/** Columns tried when several hold temperatures. */
const MOST_COLUMNS = 24;

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
  const column = Number(answers.column);
  return {
    unit: answers.unit || null,
    startsOn: answers.day || null,
    offset: offsetText(offsetMin),
    startsAt: answers.startsAt,
    ...(answers.times ? { times: answers.times } : {}),
    ...(answers.elapsedUnit ? { elapsedUnit: answers.elapsedUnit } : {}),
    ...(answers.dateOrder ? { dateOrder: answers.dateOrder } : {}),
    ...(answers.column !== '' && Number.isInteger(column) ? { temperatureColumn: column } : {}),
  };
}

/** Columns that can be read as the core, with their headings, for a person to choose from. */
export function coreColumns(
  parse: typeof parseProbeLog,
  text: string,
  options: PasteOptions,
): { index: number; heading: string }[] {
  const head = text
    .slice(0, 20_000)
    .split(/\r\n|\r|\n/, HEAD_LINES)
    .join('\n');
  // A day and a start are put in here so that only the column is left to decide.
  const settled = {
    startsOn: options.startsOn ?? '2000-01-01',
    startsAt: options.startsAt ?? '2000-01-01T00:00:00Z',
    dateOrder: options.dateOrder ?? 'day-month',
  } as const;
  const columns: { index: number; heading: string }[] = [];
  for (let index = 0; index < MOST_COLUMNS; index++) {
    const choice = { ...options, ...settled, temperatureColumn: index };
    const named = parse(head, { ...choice, unit: null });
    const read = named.ok ? named : parse(head, { ...choice, unit: 'C' });
    if (read.ok && read.value.temperatureColumn === index)
      columns.push({ index, heading: read.value.heading || `column ${index + 1}` });
  }
  return columns;
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

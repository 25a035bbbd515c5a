import { instantMs, isoLike } from '../../process/index.ts';
import { enteredEntry, fail, ok, parseQuantity, type Result } from '../../quantities/index.ts';
import { cellsOf } from './cells.ts';
import { findLayout, type Layout } from './layout.ts';
import {
  MAX_PASTE,
  MAX_READINGS,
  type PastedLog,
  type PastedReading,
  type PasteIssue,
  type PasteIssueCode,
  type PasteOptions,
  type PasteWarning,
  type PasteWarningCode,
  ROLLOVER_MIN,
} from './pasted-log.ts';
import {
  type DateOrder,
  durationMinutes,
  isAmbiguousDate,
  isoDate,
  timeCell,
  writtenDate,
} from './time-cell.ts';

const MS_PER_MIN = 60_000;
const MIN_PER_DAY = 1440;
const ELAPSED_MIN = { s: 1 / 60, min: 1, h: 60 } as const;

function refuse(code: PasteIssueCode, found: readonly string[] = []): { ok: false; issue: PasteIssue } {
  return fail({ code, found });
}

/** A row with its time still as written. */
interface Row {
  readonly line: number;
  readonly time: string;
  readonly date: string | null;
  readonly figure: string;
}

/** A row with its time in ms since 1970 UTC. */
interface TimedRow {
  readonly row: Row;
  readonly atMs: number;
}

function rowsOf(lines: readonly string[], layout: Layout): Row[] {
  const rows: Row[] = [];
  for (const [index, text] of lines.entries()) {
    if (index < layout.firstLine || text.trim() === '') continue;
    const cells = cellsOf(text, layout.separator);
    rows.push({
      line: index + 1,
      time: cells[layout.timeColumn] ?? '',
      date: layout.dateColumn === null ? null : (cells[layout.dateColumn] ?? ''),
      figure: cells[layout.temperatureColumn] ?? '',
    });
  }
  return rows;
}

/** `4/3/2026` needs its order, unless one of the dates settles it. */
function dateOrderOf(rows: readonly Row[], options: PasteOptions): DateOrder | null | 'unknown' {
  const dates = rows.map((row) => writtenDate(row.date ?? row.time)).filter((date) => date !== null);
  if (options.dateOrder !== undefined || !dates.some(isAmbiguousDate)) return options.dateOrder ?? null;
  const slashed = dates.filter((date) => date.includes('/') && !/^\d{4}/.test(date));
  if (slashed.some((date) => Number(date.split('/')[0]) > 12)) return 'day-month';
  return slashed.some((date) => Number(date.split('/')[1]) > 12) ? 'month-day' : 'unknown';
}

function elapsedUnitOf(layout: Layout, options: PasteOptions): keyof typeof ELAPSED_MIN {
  if (options.elapsedUnit !== undefined) return options.elapsedUnit;
  const heading = layout.headings[layout.timeColumn] ?? '';
  if (/\b(?:s|sec|secs|seconds?)\b/i.test(heading)) return 's';
  return /\b(?:h|hr|hrs|hours?)\b/i.test(heading) ? 'h' : 'min';
}

/** Clock of a row in minutes: of the day, since the start, or of a dated day since 1970, in the clock's own zone. */
function minutesOf(
  row: Row,
  layout: Layout,
  order: DateOrder | null,
  elapsedMin: number,
): { minutes: number; zone: string | null } | null {
  if (layout.times === 'elapsed') {
    const clocked = durationMinutes(row.time);
    const plain = Number(row.time.replace(',', '.'));
    if (clocked === null && (row.time === '' || !Number.isFinite(plain))) return null;
    return { minutes: clocked ?? plain * elapsedMin, zone: null };
  }
  const cell = timeCell(row.time, order);
  if (cell === null || cell.kind === 'date') return null;
  if (layout.times === 'clock') return cell.kind === 'clock' ? { minutes: cell.clockMin, zone: null } : null;
  const date = cell.kind === 'stamp' ? cell.date : isoDate(row.date ?? '', order);
  const midnight = date === null ? null : Date.parse(`${date}T00:00:00Z`) / MS_PER_MIN;
  if (midnight === null) return null;
  return { minutes: midnight + cell.clockMin, zone: cell.kind === 'stamp' ? cell.zone : null };
}

/**
 * Some loggers write the newest line first. Only a paste that falls all the way is turned round, and a bare clock only
 * where no step could as well be a midnight.
 */
function isNewestFirst(times: readonly number[], barelyClock: boolean): boolean {
  const furthest = barelyClock ? ROLLOVER_MIN : Number.POSITIVE_INFINITY;
  const falls = times.slice(1).map((time, index) => (times[index] ?? time) - time);
  return (
    times.length > 2 &&
    (times.at(0) ?? 0) > (times.at(-1) ?? 0) &&
    falls.every((fall) => fall >= 0 && fall <= furthest)
  );
}

function headingUnit(layout: Layout): 'C' | 'F' | null {
  const heading = layout.headings[layout.temperatureColumn] ?? '';
  if (/fahrenheit|[°º]\s*f\b|\(\s*f\s*\)|deg\.?\s*f\b|_f\b/i.test(heading)) return 'F';
  return /celsius|[°º]\s*c\b|\(\s*c\s*\)|deg\.?\s*c\b|_c\b/i.test(heading) ? 'C' : null;
}

interface Timeline {
  readonly rows: readonly TimedRow[];
  readonly warnings: readonly PasteWarning[];
  readonly like: string;
}

/** Put every row in time. Rows whose time cannot be read are told, never dropped in silence. */
function timeline(rows: readonly Row[], layout: Layout, options: PasteOptions): Result<Timeline, PasteIssue> {
  const order = dateOrderOf(rows, options);
  if (order === 'unknown') return refuse('date-order-needed');
  const zone = `2000-01-01T00:00:00${options.offset}`;
  const zoneMs = instantMs(zone);
  if (zoneMs === null) return refuse('bad-zone', [options.offset]);
  const shiftMs = zoneMs - Date.UTC(2000, 0, 1);
  const startMs = layout.times === 'elapsed' ? instantMs(options.startsAt ?? null) : 0;
  if (startMs === null) return refuse('start-needed');
  const dayMs =
    layout.times === 'clock' ? instantMs(`${options.startsOn ?? ''}T00:00:00${options.offset}`) : 0;
  if (dayMs === null) return refuse('day-needed');

  const warnings: PasteWarning[] = [];
  const warn = (code: PasteWarningCode, row: Row, found: string) =>
    warnings.push({ code, line: row.line, found });
  const elapsedMin = ELAPSED_MIN[elapsedUnitOf(layout, options)];
  let read: { row: Row; minutes: number; zone: string | null }[] = [];
  for (const row of rows) {
    const time = minutesOf(row, layout, order, elapsedMin);
    if (time === null) warn('row-not-read', row, `${row.time} ${row.figure}`.trim());
    else read.push({ row, ...time });
  }
  const [first] = read;
  if (
    first &&
    isNewestFirst(
      read.map((entry) => entry.minutes),
      layout.times === 'clock',
    )
  ) {
    warn('newest-first', first.row, first.row.time);
    read = read.toReversed();
  }
  let days = 0;
  let before = Number.NEGATIVE_INFINITY;
  const timed = read.map(({ row, minutes, zone: named }) => {
    if (minutes < before) {
      const rollover = layout.times === 'clock' && before - minutes > ROLLOVER_MIN;
      if (rollover) days += MIN_PER_DAY;
      warn(rollover ? 'next-day' : 'clock-went-back', row, row.time);
    }
    before = minutes;
    const namedMs = named === null ? null : instantMs(`2000-01-01T00:00:00${named}`);
    const zoneShiftMs = namedMs === null ? shiftMs : namedMs - Date.UTC(2000, 0, 1);
    const base = layout.times === 'elapsed' ? startMs : layout.times === 'clock' ? dayMs : zoneShiftMs;
    return { row, atMs: base + (minutes + days) * MS_PER_MIN };
  });
  const like = layout.times === 'elapsed' ? (options.startsAt ?? zone) : zone;
  return ok({ rows: timed, warnings, like });
}

/**
 * Read a pasted or loaded probe log: two columns or a logger's file, parted by tabs, semicolons, commas, bars or
 * spaces; clock times, dates with times, or minutes since the start; decimal point or comma; °C or °F.
 *
 * Clock times that go back by more than three hours have passed midnight; less is told as `clock-went-back` and kept
 * as written. Blank and unreadable figures are kept as readings, so that they break a hold. Nothing is guessed: a
 * second temperature column, a date in two possible orders or a missing day comes back as an issue.
 *
 * @returns readings in the order of the paste (oldest first), with warnings by line; or one issue
 * @example parseProbeLog('10:00 70.8\n10:02 71.1', { unit: 'C', startsOn: '2026-03-10', offset: 'Z' })
 */
export function parseProbeLog(text: string, options: PasteOptions): Result<PastedLog, PasteIssue> {
  if (text.length > MAX_PASTE) return refuse('too-large', [`${MAX_PASTE}`]);
  if (text.trim() === '') return refuse('empty');
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  const found = findLayout(lines, options);
  if (!found.ok) return found;
  const { layout } = found;
  const rows = rowsOf(lines, layout);
  if (rows.length > MAX_READINGS) return refuse('too-many-readings', [`${MAX_READINGS}`]);
  const named = headingUnit(layout);
  if (named !== null && options.unit !== null && named !== options.unit)
    return refuse('unit-conflict', [`°${named}`]);
  const unit = named ?? options.unit;
  const line = timeline(rows, layout, options);
  if (!line.ok) return line;
  const warnings: PasteWarning[] = [...line.value.warnings];
  for (const column of layout.ignored) warnings.push({ code: 'column-ignored', line: 1, found: column });
  const readings: PastedReading[] = [];
  for (const { row, atMs } of line.value.rows) {
    const figure = parseQuantity('temperature', row.figure, unit ?? 'C');
    const bare = /^[-+\u2212\d\s.,]*$/.test(row.figure);
    if (unit === null && bare && row.figure !== '') return refuse('unit-needed');
    if (!figure.ok) {
      const code = row.figure === '' ? 'temperature-blank' : 'temperature-not-read';
      warnings.push({ code, line: row.line, found: row.figure || row.time });
    }
    const temperature = enteredEntry(
      row.figure,
      figure.ok && !bare ? scaleOf(figure.value.unit) : (unit ?? 'C'),
    );
    readings.push({ line: row.line, at: isoLike(atMs, line.value.like), temperature, readable: figure.ok });
  }
  if (readings.length === 0) return refuse('no-readings');
  const { times, temperatureColumn, headings } = layout;
  return ok({ readings, warnings, times, temperatureColumn, heading: headings[temperatureColumn] ?? '' });
}

function scaleOf(unit: string): 'C' | 'F' {
  return unit === 'F' ? 'F' : 'C';
}

import { parseQuantity } from '../../quantities/index.ts';
import { cellsOf, SEPARATORS, type Separator } from './cells.ts';
import type { PasteIssue, PasteOptions } from './pasted-log.ts';
import { durationMinutes, timeCell } from './time-cell.ts';

/** Lines looked at to find out how the paste is built. */
const SAMPLE_LINES = 200;

const ELAPSED_HEADING = /elapsed|duration|since|^\s*(?:min|mins|minutes|s|sec|seconds|h|hours)\b/i;
const TEMPERATURE_HEADING = /temp|core|probe|celsius|fahrenheit|[°º]\s*[cf]\b|\(\s*[cf]\s*\)|deg/i;
const OTHER_HEADING =
  /^(?:#|no\.?|nr\.?|index|record|sample|row)$|humid|\brh\b|%|batter|volt|alarm|set ?point/i;

/** Where the times and the core stand in the paste. */
export interface Layout {
  readonly separator: Separator;
  readonly headings: readonly string[];
  /** First line of readings, from 0. */
  readonly firstLine: number;
  readonly times: 'stamp' | 'clock' | 'elapsed';
  readonly timeColumn: number;
  /** Column of a date that stands apart from the clock. */
  readonly dateColumn: number | null;
  readonly temperatureColumn: number;
  readonly ignored: readonly string[];
}

type Found =
  | { readonly ok: true; readonly layout: Layout }
  | { readonly ok: false; readonly issue: PasteIssue };

function isFigure(cell: string): boolean {
  return parseQuantity('temperature', cell, 'C').ok;
}

export interface Column {
  readonly index: number;
  readonly heading: string;
  readonly cells: readonly string[];
}

/** Most of the cells that hold anything are of one kind. */
function mostly(column: Column, test: (cell: string) => boolean): boolean {
  const written = column.cells.filter((cell) => cell !== '');
  return written.length > 0 && written.filter(test).length * 2 > written.length;
}

function rising(column: Column): boolean {
  const values = column.cells.map((cell) => Number(cell.replace(',', '.')));
  return values.length > 1 && values.every((value, index) => index === 0 || value > (values[index - 1] ?? 0));
}

function isTime(kind: 'stamp' | 'clock' | 'date') {
  return (cell: string) => timeCell(cell, null)?.kind === kind;
}

/** Lines that carry a time or a figure are readings; the ones before the first of them are headings. */
export function sampleOf(
  lines: readonly string[],
  separator: Separator,
): { columns: Column[]; firstLine: number } {
  const rows = lines.slice(0, SAMPLE_LINES).map((line) => cellsOf(line, separator));
  const isData = (row: string[]) =>
    row.some((cell) => timeCell(cell, null) !== null && timeCell(cell, null)?.kind !== 'date') ||
    (row.length > 1 &&
      row.every((cell) => cell === '' || isFigure(cell) || durationMinutes(cell) !== null) &&
      row.some(isFigure));
  const firstLine = rows.findIndex(isData);
  if (firstLine === -1) return { columns: [], firstLine: 0 };
  const data = rows.slice(firstLine).filter(isData);
  const heading = rows.slice(0, firstLine).findLast((row) => row.some((cell) => cell !== '')) ?? [];
  const width = Math.max(...data.map((row) => row.length));
  const columns = Array.from({ length: width }, (_, index) => ({
    index,
    heading: heading[index] ?? '',
    cells: data.map((row) => row[index] ?? ''),
  }));
  return { columns, firstLine };
}

interface Times {
  readonly times: Layout['times'];
  readonly time: Column;
  readonly date: Column | null;
}

/** The date that stands beside a clock: the one a person chose, none if they said so, else the first. */
function dateBeside(columns: readonly Column[], { dateColumn }: PasteOptions): Column | null {
  if (dateColumn === undefined) return columns.find((column) => mostly(column, isTime('date'))) ?? null;
  return columns.find((column) => column.index === dateColumn) ?? null;
}

/** Times out of the column a person chose, read as what most of its cells are. */
function chosenTimes(columns: readonly Column[], time: Column, options: PasteOptions): Times | null {
  if (mostly(time, isTime('stamp'))) return { times: 'stamp', time, date: null };
  const isDuration = mostly(time, (cell) => durationMinutes(cell) !== null);
  const elapsed =
    options.times === 'elapsed' ||
    (options.times === undefined && /elapsed|duration|since/i.test(time.heading));
  if (isDuration && elapsed) return { times: 'elapsed', time, date: null };
  if (mostly(time, isTime('clock'))) {
    const date = dateBeside(columns, options);
    return { times: date ? 'stamp' : 'clock', time, date };
  }
  return mostly(time, isFigure) ? { times: 'elapsed', time, date: null } : null;
}

function findTimes(columns: readonly Column[], options: PasteOptions): Times | null {
  const chosen = columns.find((column) => column.index === options.timeColumn);
  if (chosen) return chosenTimes(columns, chosen, options);
  const stamp = columns.find((column) => mostly(column, isTime('stamp')));
  if (stamp) return { times: 'stamp', time: stamp, date: null };
  const duration = columns.find((column) => mostly(column, (cell) => durationMinutes(cell) !== null));
  const elapsedClock =
    options.times === 'elapsed' ||
    (options.times === undefined && duration && /elapsed|duration|since/i.test(duration.heading));
  if (duration && elapsedClock) return { times: 'elapsed', time: duration, date: null };
  const clock = columns.find((column) => mostly(column, isTime('clock')));
  if (clock) {
    const date = dateBeside(columns, options);
    return { times: date ? 'stamp' : 'clock', time: clock, date };
  }
  const numbers = columns.filter((column) => mostly(column, isFigure));
  const elapsed = numbers.find((column) => ELAPSED_HEADING.test(column.heading)) ?? numbers.at(0);
  return elapsed && numbers.length > 1 && rising(elapsed)
    ? { times: 'elapsed', time: elapsed, date: null }
    : null;
}

/** 1, 2, 3 …: the number of the record. Figures that happen to rise so are taken for that only beside others. */
function isCount({ cells }: Column): boolean {
  const numbers = cells.map(Number);
  return (
    cells.length > 2 &&
    numbers.every((value, index) => index === 0 || value === (numbers[index - 1] ?? 0) + 1)
  );
}

/** `10:00,71,5`: a decimal comma in a paste parted by commas reads as two columns. */
function isCutFigure(candidates: readonly Column[], separator: Separator): boolean {
  const [whole, part] = candidates;
  return (
    separator === ',' &&
    candidates.length === 2 &&
    part?.index === (whole?.index ?? 0) + 1 &&
    part.heading === '' &&
    part.cells.every((cell) => cell === '' || /^\d{1,2}$/.test(cell)) &&
    whole?.cells.every((cell) => /^-?\d*$/.test(cell)) === true
  );
}

function temperatureOf(
  columns: readonly Column[],
  times: Times,
  separator: Separator,
  options: PasteOptions,
): Found | Column {
  const fail = (code: PasteIssue['code'], found: readonly Column[] = []): Found => ({
    ok: false,
    issue: { code, found: found.map((column) => column.heading || `${column.index + 1}`) },
  });
  const others = columns.filter((column) => column !== times.time && column !== times.date);
  const chosen = others.find((column) => column.index === options.temperatureColumn);
  if (chosen) return chosen;
  const figures = others.filter((column) => mostly(column, isFigure));
  const plain = figures.filter((column) => !OTHER_HEADING.test(column.heading));
  const candidates = plain.length > 1 ? plain.filter((column) => !isCount(column)) : plain;
  if (isCutFigure(candidates, separator)) return fail('decimal-comma-in-commas');
  const named = candidates.filter((column) => TEMPERATURE_HEADING.test(column.heading));
  const [first, second] = named.length > 0 ? named : candidates;
  if (first && !second) return first;
  return first ? fail('which-column', candidates) : fail('no-temperatures', others);
}

/** Find out how a paste is built. The first separator that gives times and one column of figures is taken. */
export function findLayout(lines: readonly string[], options: PasteOptions): Found {
  let issue: PasteIssue = { code: 'no-times', found: [] };
  const final: readonly PasteIssue['code'][] = ['which-column', 'decimal-comma-in-commas'];
  for (const separator of options.separator ? [options.separator] : SEPARATORS) {
    const { columns, firstLine } = sampleOf(lines, separator);
    const times = findTimes(columns, options);
    if (!times) continue;
    const temperature = temperatureOf(columns, times, separator, options);
    if ('ok' in temperature) {
      if (!temperature.ok) issue = temperature.issue;
      if (final.includes(issue.code)) return temperature;
      continue;
    }
    const used = [times.time, times.date, temperature];
    const ignored = columns.filter((column) => !used.includes(column) && mostly(column, isFigure));
    return {
      ok: true,
      layout: {
        separator,
        headings: columns.map((column) => column.heading),
        firstLine,
        times: times.times,
        timeColumn: times.time.index,
        dateColumn: times.date?.index ?? null,
        temperatureColumn: temperature.index,
        ignored: ignored.map((column) => column.heading || `${column.index + 1}`),
      },
    };
  }
  return { ok: false, issue };
}

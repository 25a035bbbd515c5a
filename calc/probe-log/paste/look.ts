import { cellsOf, SEPARATORS, type Separator } from './cells.ts';
import { findLayout, sampleOf } from './layout.ts';
import type { PasteOptions } from './pasted-log.ts';

/** Lines enough to see how a log is built, and rows of them that are shown. */
const HEAD_LINES = 60;
const HEAD_CHARACTERS = 20_000;
const SHOWN_ROWS = 4;

/** One column of a paste, as it stands there. */
export interface LookedColumn {
  /** From 0. */
  readonly index: number;
  /** Blank where the paste has no headings. */
  readonly heading: string;
  /** The first cells under it. */
  readonly cells: readonly string[];
}

/** How a paste is built, for a person to say what each column holds. */
export interface PasteLook {
  readonly separator: Separator;
  readonly columns: readonly LookedColumn[];
  /** Columns the times and the core are read from; null where nothing was found. */
  readonly time: number | null;
  readonly date: number | null;
  readonly core: number | null;
}

/** The first separator that parts most lines; a space parts everything and is left to the last. */
function likelySeparator(lines: readonly string[]): Separator {
  const written = lines.filter((line) => line.trim() !== '');
  const parts = (separator: Separator) =>
    written.filter((line) => cellsOf(line, separator).length > 1).length * 2 > written.length;
  return SEPARATORS.find(parts) ?? ' ';
}

/** Columns of a paste in which no line looks like a reading. */
function asTheyStand(lines: readonly string[], separator: Separator): LookedColumn[] {
  const rows = lines
    .filter((line) => line.trim() !== '')
    .slice(0, SHOWN_ROWS)
    .map((line) => cellsOf(line, separator));
  const width = Math.max(0, ...rows.map((row) => row.length));
  return Array.from({ length: width }, (_, index) => ({
    index,
    heading: '',
    cells: rows.map((row) => row[index] ?? ''),
  }));
}

/**
 * Looks at the head of a paste: its columns with their first cells, and what is read from which.
 *
 * @param options what a person has said already
 */
export function lookAtPaste(text: string, options: PasteOptions): PasteLook {
  const lines = text
    .slice(0, HEAD_CHARACTERS)
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/, HEAD_LINES);
  const found = findLayout(lines, options);
  const layout = found.ok ? found.layout : null;
  const separator = layout?.separator ?? options.separator ?? likelySeparator(lines);
  const sampled = sampleOf(lines, separator).columns;
  return {
    separator,
    columns: (sampled.length > 0 ? sampled : asTheyStand(lines, separator)).map(
      ({ index, heading, cells }) => ({
        index,
        heading,
        cells: cells.slice(0, SHOWN_ROWS),
      }),
    ),
    time: layout?.timeColumn ?? options.timeColumn ?? null,
    date: layout ? layout.dateColumn : (options.dateColumn ?? null),
    core: layout?.temperatureColumn ?? options.temperatureColumn ?? null,
  };
}

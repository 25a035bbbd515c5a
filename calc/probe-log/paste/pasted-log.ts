import type { Entry } from '../../quantities/index.ts';
import type { Separator } from './cells.ts';

/** Longest paste that is read, characters. A logger writing every second for a day is half of it. */
export const MAX_PASTE = 4_000_000;
/** Most readings one log may hold. */
export const MAX_READINGS = 120_000;
/** A clock that goes back further than this has passed midnight; less is a slip or a change of the clocks. */
export const ROLLOVER_MIN = 180;

export interface PasteOptions {
  /** Scale of figures that name none. Null: header or figures must name it. */
  readonly unit: 'C' | 'F' | null;
  /** Day of the first clock time, ISO date. Null: times must carry their date. */
  readonly startsOn: string | null;
  /** Zone offset of the clock that wrote the times: `+01:00` or `Z`. */
  readonly offset: string;
  /** Moment at which elapsed time is zero, ISO 8601 with offset. */
  readonly startsAt?: string | null;
  /** Read `0:15` as time since the start instead of a quarter past midnight. */
  readonly times?: 'clock' | 'elapsed';
  /** Unit of bare elapsed numbers; minutes where neither this nor a header says. */
  readonly elapsedUnit?: 's' | 'min' | 'h';
  /** Order of `4/3/2026`. */
  readonly dateOrder?: 'day-month' | 'month-day';
  /** Which column holds the core, from 0, where the paste has several. */
  readonly temperatureColumn?: number;
  /** Which column holds the time, or date and time. */
  readonly timeColumn?: number;
  /** Which column holds the date beside a clock; null: none does. */
  readonly dateColumn?: number | null;
  /** What parts the columns, where the paste can be read in two ways. */
  readonly separator?: Separator;
}

export interface PastedReading {
  /** Line of the paste, from 1. */
  readonly line: number;
  /** ISO 8601 with offset. */
  readonly at: string;
  /** The figure as it stood there; blank or unreadable text is kept. */
  readonly temperature: Entry;
  readonly readable: boolean;
}

export type PasteWarningCode =
  | 'row-not-read'
  | 'temperature-blank'
  | 'temperature-not-read'
  | 'clock-went-back'
  | 'next-day'
  | 'newest-first'
  | 'column-ignored';

export interface PasteWarning {
  readonly code: PasteWarningCode;
  readonly line: number;
  readonly found: string;
}

export type PasteIssueCode =
  | 'empty'
  | 'too-large'
  | 'too-many-readings'
  | 'no-times'
  | 'no-temperatures'
  | 'no-readings'
  | 'which-column'
  | 'decimal-comma-in-commas'
  | 'unit-needed'
  | 'unit-conflict'
  | 'day-needed'
  | 'start-needed'
  | 'date-order-needed'
  | 'bad-zone';

export interface PasteIssue {
  readonly code: PasteIssueCode;
  /** Words the sentence needs: the columns to choose from, the limit passed. */
  readonly found: readonly string[];
}

export interface PastedLog {
  readonly readings: readonly PastedReading[];
  readonly warnings: readonly PasteWarning[];
  /** How the times were read. */
  readonly times: 'stamp' | 'clock' | 'elapsed';
  /** Column the core was read from, from 0, and its heading. */
  readonly temperatureColumn: number;
  readonly heading: string;
}

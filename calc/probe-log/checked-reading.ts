import type { Exclusion } from '../process/index.ts';

/** Why a reading cannot be what the core was. */
export type Doubt =
  /** Hotter than water boils: no moist core gets there in an open kitchen. Often °F typed as °C. */
  | 'too-hot'
  | 'too-cold'
  /** Hotter than the water or air around it ever was. */
  | 'above-medium'
  /** Faster than heat moves into or out of a core. */
  | 'jump'
  /** Far under both its neighbours: the probe was out for a moment. */
  | 'dip'
  /** Far over both its neighbours: a slip of the pen. */
  | 'spike'
  /** Written after a later reading: one of the two times is wrong. */
  | 'clock-back';

/**
 * `counts`: used for and against. `cannot-be`: kept, breaks a hold, counts against cooling, shows nothing reached.
 * `unreadable`: no figure or no time; breaks a hold. `excluded`: taken out by a person, listed, not used.
 */
export type ReadingState = 'counts' | 'cannot-be' | 'unreadable' | 'excluded';

/** One reading with the probe's offset taken off, placed in time and looked at for what cannot be. */
export interface CheckedReading {
  readonly id: string;
  /** Place in the order it was written, from 0. */
  readonly index: number;
  /** As written: ISO 8601 with offset. */
  readonly at: string;
  readonly atMs: number;
  /** What the display showed, as typed, and its unit. */
  readonly shown: string;
  readonly unit: 'C' | 'F';
  /** °C, offset taken off (as shown where the offset is not known); null when unreadable. */
  readonly tempC: number | null;
  readonly state: ReadingState;
  readonly doubt: Doubt | null;
  readonly exclusion: Exclusion | null;
  /** Marked as taken out, but without a reason or initials: it still counts. */
  readonly exclusionIncomplete: boolean;
  /** Minutes between reading and typing in, where over `LATE_ENTRY_MIN`; else null. */
  readonly enteredLateMin: number | null;
}

/** A reading typed in later than this after it was read has both times printed. House rule. */
export const LATE_ENTRY_MIN = 15;

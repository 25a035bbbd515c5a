/** What a clock counts. */
export type ClockKind =
  /** A stage of a batch that was begun and not ended: counts up. */
  | 'stage'
  /** A limit that has to be shown to be met before it runs out: counts down, and never shows too much. */
  | 'limit'
  /** A time that has to be held at least: counts down, and never shows too little. */
  | 'hold'
  /** A named step of a person's own. */
  | 'timer';

/**
 * One running clock of this device. Moments are instants, ms since 1970 UTC: neither a reload nor a change of summer time
 * moves them.
 */
export interface Clock {
  readonly id: string;
  /** The batch it belongs to; '' for none. */
  readonly batchId: string;
  /** What that batch is called. */
  readonly batch: string;
  /** IANA zone its times are shown in. */
  readonly zone: string;
  readonly kind: ClockKind;
  readonly label: string;
  readonly startedMs: number;
  /** Null: it counts up. */
  readonly endsMs: number | null;
  /** The limit may run: no reading shows yet that it does. */
  readonly maybe: boolean;
  /** Minutes before the end that were called out already. */
  readonly told: readonly number[];
}

/** The present on the two sides of doubt: they differ while this device's clock was set back and nobody has looked at it. */
export interface Present {
  /** The earliest it can be, ms. */
  readonly earlyMs: number;
  /** The latest it can be, ms. */
  readonly lateMs: number;
}

const MINUTE_MS = 60_000;
const LIMIT_MARKS = [30, 15, 5, 0];
/** A step shorter than this is called out at its end alone. */
const LONG_MIN = 15;

/** Minutes before the end at which a clock is called out. */
function marksOf({ kind, startedMs, endsMs }: Clock): readonly number[] {
  if (endsMs === null) return [];
  const wholeMin = (endsMs - startedMs) / MINUTE_MS;
  if (kind === 'limit') return LIMIT_MARKS.filter((mark) => mark < wholeMin);
  return kind === 'timer' && wholeMin > LONG_MIN ? [5, 0] : [0];
}

/** Whole minutes left, on the pessimistic side of its kind; 0 or less when it has run out. Null: it counts up. */
export function minutesLeft({ kind, endsMs }: Clock, { earlyMs, lateMs }: Present): number | null {
  if (endsMs === null) return null;
  return kind === 'limit'
    ? Math.floor((endsMs - lateMs) / MINUTE_MS)
    : Math.ceil((endsMs - earlyMs) / MINUTE_MS);
}

/** Whether its end has come, by the side of doubt that counts for its kind. */
export function hasRunOut({ kind, endsMs }: Clock, { earlyMs, lateMs }: Present): boolean {
  return endsMs !== null && (kind === 'limit' ? lateMs : earlyMs) >= endsMs;
}

/** Whole minutes since it began, never more than it can be. */
export const minutesRun = ({ startedMs }: Clock, { earlyMs }: Present): number =>
  Math.max(0, Math.floor((earlyMs - startedMs) / MINUTE_MS));

/**
 * The mark that has to be called out now: the last one that was passed, if it was not called yet. After a sleep of the
 * device that is one call, not one for every mark it slept through.
 */
export function dueMark(clock: Clock, present: Present): number | null {
  const passed = passedMarks(clock, present);
  const last = passed.at(-1);
  return last === undefined || clock.told.includes(last) ? null : last;
}

/** All marks behind the present, the last one last. */
export function passedMarks(clock: Clock, { earlyMs, lateMs }: Present): number[] {
  const { kind, endsMs } = clock;
  if (endsMs === null) return [];
  const leftMs = endsMs - (kind === 'limit' ? lateMs : earlyMs);
  return marksOf(clock).filter((mark) => leftMs <= mark * MINUTE_MS);
}

/** What calls for a hand first: what runs out soonest, then what counts up. */
export function byUrgency(a: Clock, b: Clock): number {
  return (
    (a.endsMs ?? Number.POSITIVE_INFINITY) - (b.endsMs ?? Number.POSITIVE_INFINITY) ||
    a.startedMs - b.startedMs
  );
}

const isText = (value: unknown, most: number): value is string =>
  typeof value === 'string' && value.length <= most;
const isMoment = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
const KINDS: readonly unknown[] = ['stage', 'limit', 'hold', 'timer'] satisfies ClockKind[];

/** Whether something that lay on the device is a clock. */
export function isClock(value: unknown): value is Clock {
  if (typeof value !== 'object' || value === null) return false;
  const { id, batchId, batch, zone, kind, label, startedMs, endsMs, maybe, told } = value as Record<
    string,
    unknown
  >;
  return (
    [id, batchId, batch, zone, label].every((text) => isText(text, 2_000)) &&
    KINDS.includes(kind) &&
    isMoment(startedMs) &&
    (endsMs === null || isMoment(endsMs)) &&
    typeof maybe === 'boolean' &&
    Array.isArray(told) &&
    told.every(isMoment)
  );
}

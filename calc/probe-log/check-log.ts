import { instantMs, type ProbeLine, type ProbeLog, type ProbeReading } from '../process/index.ts';
import { entryValue, type Reading, readEntry } from '../quantities/index.ts';
import { checkedOnce } from './checked-once.ts';
import { type CheckedReading, type Doubt, LATE_ENTRY_MIN } from './checked-reading.ts';
import { CORE_BOUNDS, figureDoubt, neighbourDoubt, type Placed, stepDoubt } from './doubts.ts';

const MS_PER_MIN = 60_000;
/** One such figure is a slip; this many say that the log is in the other unit. */
const UNIT_SUSPECT_READINGS = 2;

/** A log ready to be judged. */
export interface CheckedLog {
  readonly id: string;
  /** °C; null while nobody has checked the probe. */
  readonly offsetC: number | null;
  /** °C, never below zero; null while unknown or not usable. */
  readonly errorC: number | null;
  /** Several figures no core can show: the log may be in °F. */
  readonly unitSuspect: boolean;
  /** In the order of time; those of one moment in the order they were written. */
  readonly readings: readonly CheckedReading[];
}

/** A reading read, before its neighbours are looked at. */
interface Draft {
  readonly reading: ProbeReading;
  readonly index: number;
  readonly atMs: number | null;
  readonly tempC: number | null;
  readonly excluded: boolean;
  doubt: Doubt | null;
}

function isExcluded({ excluded }: ProbeReading): boolean {
  return excluded !== null && excluded.reason.trim() !== '' && excluded.initials.trim() !== '';
}

/** The core from what the display showed: along the line of two checks where there are two, else one offset off. */
function corrected(shownC: number, offsetC: number, line: ProbeLine | undefined): number {
  if (!line) return shownC - offsetC;
  const { iceShownC, boilShownC, boilsAtC } = line;
  return ((shownC - iceShownC) * boilsAtC) / (boilShownC - iceShownC);
}

function draftOf(
  reading: ProbeReading,
  index: number,
  offsetC: number,
  line: ProbeLine | undefined,
  hottestMediumC: number | null,
): Draft {
  const { atMs, shown } = read(reading);
  const tempC = shown.state === 'ok' ? corrected(shown.value, offsetC, line) : null;
  const excluded = isExcluded(reading);
  const doubt = tempC === null || excluded ? null : figureDoubt(tempC, hottestMediumC);
  return { reading, index, atMs, tempC, excluded, doubt };
}

interface Read {
  readonly at: string;
  readonly text: string;
  readonly unit: string;
  readonly atMs: number | null;
  readonly shown: Reading;
}

/**
 * What was read off each reading, with the texts it was read from. A log of a hundred thousand rows is judged by three
 * subjects with every edit; only a text that has changed is read again.
 */
const known = new WeakMap<ProbeReading, Read>();

function read(reading: ProbeReading): Read {
  const { at, temperature } = reading;
  const before = known.get(reading);
  if (before && before.at === at && before.text === temperature.text && before.unit === temperature.unit)
    return before;
  const { text, unit } = temperature;
  const fresh = { at, text, unit, atMs: instantMs(at), shown: readEntry('temperature', temperature) };
  known.set(reading, fresh);
  return fresh;
}

/** Readings written after a later one. One time of the two is wrong, and nobody can say which. */
function markClock(drafts: readonly Draft[]): void {
  let lastMs = Number.NEGATIVE_INFINITY;
  for (const draft of drafts) {
    if (draft.atMs === null || draft.excluded) continue;
    if (draft.atMs < lastMs) draft.doubt ??= 'clock-back';
    else lastMs = draft.atMs;
  }
}

/** Drafts that still stand, in time: what neighbours and steps are measured by. */
function sound(drafts: readonly (Draft & { readonly atMs: number })[]): (Draft & Placed)[] {
  return drafts.filter(
    (draft): draft is Draft & { atMs: number; tempC: number } =>
      draft.tempC !== null && !draft.excluded && draft.doubt === null,
  );
}

function markNeighbours(drafts: readonly (Draft & { readonly atMs: number })[]): void {
  const standing = sound(drafts);
  const doubts = standing.map((here, index) =>
    neighbourDoubt(standing[index - 1], here, standing[index + 1]),
  );
  for (const [index, draft] of standing.entries()) draft.doubt = doubts[index] ?? null;
  let before: Placed | undefined;
  for (const here of sound(drafts)) {
    here.doubt = stepDoubt(before, here);
    if (here.doubt === null) before = here;
  }
}

/** Give a reading without a time the place of the one written before it, so that it breaks what it stood in. */
function placed(drafts: readonly Draft[]): (Draft & { readonly atMs: number })[] {
  let lastMs = drafts.find((draft) => draft.atMs !== null)?.atMs ?? 0;
  const out = drafts.map((draft) => {
    lastMs = draft.atMs ?? lastMs;
    return Object.assign(draft, { atMs: lastMs });
  });
  return out.sort((a, b) => a.atMs - b.atMs || a.index - b.index);
}

function finish(draft: Draft & { readonly atMs: number }, timed: boolean): CheckedReading {
  const { reading, index, atMs, tempC, excluded, doubt } = draft;
  const enteredMs = reading.enteredAt === reading.at ? atMs : instantMs(reading.enteredAt);
  const lateMin = enteredMs === null ? 0 : (enteredMs - atMs) / MS_PER_MIN;
  const unreadable = tempC === null || !timed;
  return {
    id: reading.id,
    index,
    at: reading.at,
    atMs,
    shown: reading.temperature.text,
    unit: shownUnit(reading),
    tempC,
    state: excluded ? 'excluded' : unreadable ? 'unreadable' : doubt === null ? 'counts' : 'cannot-be',
    doubt: excluded || unreadable ? null : doubt,
    exclusion: reading.excluded,
    exclusionIncomplete: reading.excluded !== null && !excluded,
    enteredLateMin: timed && lateMin > LATE_ENTRY_MIN ? lateMin : null,
  };
}

/** The scale a figure was read on: its own unit where the text names one ("160 °F"), else the field's. */
function shownUnit(reading: ProbeReading): 'C' | 'F' {
  const { shown } = read(reading);
  const unit = shown.state === 'ok' ? shown.unit : reading.temperature.unit;
  return unit === 'F' ? 'F' : 'C';
}

/**
 * Take the probe's offset off every reading, put them in the order of time and mark those that cannot be.
 * Nothing is dropped: a reading leaves the verdict only when a person excludes it with a reason and initials.
 *
 * @param hottestMediumC hottest water or air any heating step names, °C; null when a step names none
 */
export function checkLog(log: ProbeLog, hottestMediumC: number | null = null): CheckedLog {
  return checked(log, hottestMediumC);
}

const checked = checkedOnce(freshlyChecked);

function freshlyChecked(log: ProbeLog, hottestMediumC: number | null): CheckedLog {
  const offsetC = entryValue('temperature-difference', log.offset);
  const errorC = entryValue('temperature-difference', log.error);
  const drafts = log.readings.map((reading, index) =>
    draftOf(reading, index, offsetC ?? 0, log.line, hottestMediumC),
  );
  const timed = new Set(drafts.filter((draft) => draft.atMs !== null).map((draft) => draft.index));
  markClock(drafts);
  const inTime = placed(drafts);
  markNeighbours(inTime.filter((draft) => timed.has(draft.index)));
  const tooHot = inTime.filter(
    ({ tempC, excluded }) => !excluded && tempC !== null && tempC > CORE_BOUNDS.hottestC,
  );
  return {
    id: log.id,
    offsetC,
    errorC: errorC !== null && errorC >= 0 ? errorC : null,
    unitSuspect: tooHot.length >= UNIT_SUSPECT_READINGS,
    readings: inTime.map((draft) => finish(draft, timed.has(draft.index))),
  };
}

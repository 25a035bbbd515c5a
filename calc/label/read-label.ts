import { compensatedSum, entryValue, readEntry } from '../quantities/index.ts';
import { ALCOHOL_KEPT } from './alcohol-kept.ts';
import { dateOfStamp, isLater } from './dates.ts';
import type { AfterCook } from './nutrition.ts';
import type { LabelPart } from './parts.ts';
import type { LabelSlice } from './slice.ts';
import type { FilledFrom, LabelContext } from './values.ts';

const MIN_PER_DAY = 1440;

/** The mix that went into the moulds: typed, else as the moulds weighed, else the whole bowl. */
export function readFilled(
  slice: LabelSlice,
  context: LabelContext,
): { filledG: number | null; from: FilledFrom | null; share: number | null } {
  const { totalG } = context.formulaValues.mix;
  const typed = readEntry('mass', slice.filled);
  const filledG =
    typed.state === 'ok' ? typed.value : typed.state === 'bad' ? null : (context.filledByMouldsG ?? totalG);
  const from = typed.state === 'ok' ? 'typed' : context.filledByMouldsG === null ? 'bowl' : 'moulds';
  if (filledG === null || !totalG) return { filledG, from: filledG === null ? null : from, share: null };
  // A scale may say a little more than the bowl held; ten times as much is a slip.
  const share = filledG / totalG;
  return { filledG, from, share: share > 0 && share <= 1.05 ? share : null };
}

/** Sum of all that is in the food, or null while any of it is unknown. */
export function ingoingOf(parts: readonly LabelPart[]): number | null {
  if (parts.length === 0 || parts.some(({ massG }) => massG === null)) return null;
  return compensatedSum(parts.map(({ massG }) => massG ?? 0));
}

/** Share of the alcohol that stays, 0–1. */
function alcoholKept(slice: LabelSlice): number | null {
  return ALCOHOL_KEPT.find(({ id }) => id === slice.alcohol)?.fraction ?? null;
}

/** What the cook did to the mass; null while it cannot be told. */
export function readAfterCook(
  slice: LabelSlice,
  ingoingG: number | null,
  finishedG: number | null,
): AfterCook | null {
  const alcoholKeptFraction = alcoholKept(slice);
  const after = (drainedFatG: number): AfterCook | null =>
    finishedG === null ? null : { finishedG, alcoholKeptFraction, drainedFatG };
  switch (slice.loss) {
    case 'nothing':
      return ingoingG === null ? null : { finishedG: ingoingG, alcoholKeptFraction, drainedFatG: 0 };
    case 'water':
      return after(0);
    case 'fat-weighed': {
      const drainedG = entryValue('mass', slice.drainedFat);
      return drainedG === null ? null : after(drainedG);
    }
    case 'juices':
    case null:
      return null;
  }
}

/** The day of the cook: logged or typed, the earlier of the two. */
export function readCookDay(
  slice: LabelSlice,
  context: LabelContext,
): { cookedOn: string | null; logged: string | null; typed: string | null } {
  const logged = dateOfStamp(context.firstCookAt);
  const typed = dateOfStamp(slice.cookedOn);
  const cookedOn =
    logged !== null && typed !== null ? (isLater(typed, logged) ? logged : typed) : (logged ?? typed);
  return { cookedOn, logged, typed };
}

/** Whole days of life; null when blank or unreadable. */
export function readLifeDays(slice: LabelSlice): number | null {
  const life = entryValue('time', slice.life);
  return life === null ? null : Math.floor(life / MIN_PER_DAY + 1e-9);
}

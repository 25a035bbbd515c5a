import { STILL_FREEZER_FILM_WM2K, type Tempering, type TemperRequest } from '@larderwright/calc/chill-budget';
import { entryValue } from '@larderwright/calc/quantities';
import { atom } from 'nanostores';
import * as say from '#words/chill-budget/tempering.ts';
import type { ChillBudgetComputed } from './compute.ts';
import { minutesText } from './temp-text.ts';

/** Nobody leaves cubes longer, min. */
const LONGEST_MIN = 240;

/** What cubes would be asked of the heat engine; a blank or unreadable field is no number and is refused. */
export function requestOf({ slice }: Pick<ChillBudgetComputed, 'slice'>): TemperRequest {
  const lean = slice.lots.find(({ kind }) => kind === 'lean');
  return {
    cubeMm: entryValue('length', slice.cube) ?? Number.NaN,
    startC: (lean && entryValue('temperature', lean.temp)) ?? Number.NaN,
    freezerC: entryValue('temperature', slice.freezer) ?? Number.NaN,
    filmWm2K: STILL_FREEZER_FILM_WM2K,
    longestMin: LONGEST_MIN,
  };
}

export type TemperRun = { for: string; outcome: Tempering | null } | { for: string; failure: string };

/** The last answer of the heat engine, and what it was asked: an answer to other measures is no answer. */
export const $tempering = atom<TemperRun | null>(null);

/** The reckoned minutes as a line for the card; null where nothing was reckoned for these cubes. */
export function temperLine(
  run: TemperRun | null,
  computed: Pick<ChillBudgetComputed, 'slice'>,
): string | null {
  if (run === null || !('outcome' in run) || run.outcome === null) return null;
  if (run.for !== JSON.stringify(requestOf(computed))) return null;
  const { firmMin, stiffMin, solidMin, longestMin } = run.outcome;
  const text = (min: number | null) => (min === null ? say.notWithin(longestMin) : minutesText(min));
  return say.reckoned(text(firmMin), text(stiffMin), text(solidMin));
}

import type { PlanBand } from '@larderwright/calc/cook-plan';
import { fixedText, type Rounding, toBase } from '@larderwright/calc/quantities';
import * as say from '#words/cook-plan/text.ts';
import { durationWords } from '../parts/clock-text.ts';

/** A temperature in both scales, whole degrees: no prediction is worth a tenth. */
export function degreesText(tempC: number, rounding: Rounding = 'nearest'): string {
  const fahrenheit = tempC / toBase(1, 'dF') + 32;
  return `${fixedText(tempC, 0, rounding)} °C (${fixedText(fahrenheit, 0, rounding)} °F)`;
}

/** A difference of temperature in both scales, tenths. */
export function riseText(riseC: number): string {
  return `${fixedText(riseC, 1)} °C (${fixedText(riseC / toBase(1, 'dF'), 1)} °F)`;
}

/** A predicted length of time: whole minutes, up. */
export const timeWords = (minutes: number) =>
  minutes < 0.5 ? '0 min' : durationWords(Math.max(2, minutes), 'up');

/** "1 h 26 min to 2 h 10 min". A band whose far edge some kitchens never reach says so. */
export function bandWords({ low, high }: PlanBand, past = say.someKitchensDrawnNeverGetThere): string {
  if (low === Number.POSITIVE_INFINITY) return say.inNearlyAll(past);
  const from = durationWords(Math.max(2, low), 'down');
  return high === Number.POSITIVE_INFINITY ? say.atTheSoonest(from, past) : say.to(from, timeWords(high));
}

/** The band of a leg of the cooling rule: a draw is followed only some way past its deadline. */
export const legBandWords = (band: PlanBand, past = say.someKitchensDrawnFarPastLimit) =>
  bandWords(band, past);

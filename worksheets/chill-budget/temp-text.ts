import { fixedText, formatQuantity, type Rounding, toBase } from '@larderwright/calc/quantities';
import * as say from '#words/chill-budget/temp-text.ts';

/** A temperature in both scales, tenths of a degree. A ceiling is rounded down, a prediction up. */
export function tempText(tempC: number, rounding: Rounding = 'nearest'): string {
  return `${fixedText(tempC, 1, rounding)} °C (${fixedText(tempC / toBase(1, 'dF') + 32, 1, rounding)} °F)`;
}

/** A warming in degrees Celsius. */
export function riseText(riseC: number): string {
  return `${riseC < 0 ? '' : '+'}${fixedText(riseC, 1)} °C`;
}

/** Whole minutes, never more than there are. */
export function minutesText(minutes: number): string {
  if (minutes === Number.POSITIVE_INFINITY) return say.noLimitTheRoomIsNo;
  return formatQuantity('time', Math.floor(minutes + 1e-9), { unit: 'min', decimals: 0, withUnit: true });
}

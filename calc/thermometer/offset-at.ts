import { convert } from '../quantities/index.ts';
import type { CheckedThermometer } from './check-thermometer.ts';

/**
 * How much a thermometer shows too much where the truth is a temperature, °C: along the line between its two checks,
 * or what its one check said. Null where neither was read.
 */
export function offsetAtC(checked: CheckedThermometer, trueC: number): number | null {
  const { iceOffsetC, boilOffsetC, boilsAtC } = checked;
  if (iceOffsetC === null || boilOffsetC === null || boilsAtC === null) return iceOffsetC ?? boilOffsetC;
  return iceOffsetC + ((boilOffsetC - iceOffsetC) * trueC) / boilsAtC;
}

/** Step of a display nobody measured, on either scale. */
const USUAL_STEP = 0.1;

/**
 * What the display itself must show for a limit, °C and °F: the limit, plus what the thermometer shows too much there,
 * plus what it may still be off, rounded up to a step of the display. What it shows too little is not taken off.
 * Null while offset or error is unknown.
 */
export function displayMustShow(
  checked: CheckedThermometer,
  limitC: number,
): { readonly tempC: number; readonly tempF: number } | null {
  const offsetC = offsetAtC(checked, limitC);
  if (offsetC === null || checked.errorC === null) return null;
  const exactC = limitC + Math.max(0, offsetC) + checked.errorC;
  const step = checked.stepC ? checked.stepC * (checked.scale === 'F' ? 1.8 : 1) : USUAL_STEP;
  return {
    tempC: upTo(exactC, checked.scale === 'C' ? step : USUAL_STEP),
    tempF: upTo(convert(exactC, 'C', 'F'), checked.scale === 'F' ? step : USUAL_STEP),
  };
}

/** The next whole step at or above. The last digits of a sum do not lift it by a whole one. */
function upTo(value: number, step: number): number {
  return Number((Math.ceil(value / step - 1e-6) * step).toFixed(6));
}

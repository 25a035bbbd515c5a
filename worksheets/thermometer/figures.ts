import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/thermometer/figures.ts';

/** A difference with its sign, °C, to the tenth; away from nothing, never toward it. */
export function offsetText(offsetC: number | null): string | null {
  if (offsetC === null) return null;
  if (Math.abs(offsetC) < 0.05) return say.rightWithin005C;
  const size = fixedText(Math.abs(offsetC), 1, 'up');
  return `${offsetC > 0 ? '+' : '−'}${size} °C`;
}

/** What the display must show, both scales. */
export function mustShowText({ tempC, tempF }: { tempC: number; tempF: number }): string {
  return `${fixedText(tempC, decimalsOf(tempC), 'up')} °C (${fixedText(tempF, decimalsOf(tempF), 'up')} °F)`;
}

/** Decimals that a figure already rounded to a step of a display has. */
function decimalsOf(value: number): number {
  return Number.isInteger(value) ? 0 : Number.isInteger(Number((value * 10).toFixed(4))) ? 1 : 2;
}

/** The local boiling point, to the tenth. */
export function boilText(tempC: number): string {
  return `${fixedText(tempC, 1)} °C (${fixedText(tempC * 1.8 + 32, 1)} °F)`;
}

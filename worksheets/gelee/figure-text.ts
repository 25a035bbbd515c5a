import type { GeleeValues } from '@larderwright/calc/gelee';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/gelee/figure-text.ts';
import { gramsText } from '../parts/number-text.ts';

/** What every figure of a jelly reads like, on the screen and on paper. */
export const rangeText = (min: number, max: number, write: (value: number) => string): string => {
  const [low, high] = [write(min), write(max)];
  return low === high ? low : say.to(low, high);
};

/** Gelatine or agar to weigh; null while unknown. */
export function gellingText({ gelling }: GeleeValues): string | null {
  return gelling && rangeText(gelling.minG, gelling.maxG, gramsText);
}

/** The same in sheets of the grade at hand. */
export function sheetsText({ sheets }: GeleeValues): string | null {
  return sheets && say.sheets(rangeText(sheets.min, sheets.max, (count) => fixedText(count, 1)));
}

/** Water to soak it in. */
export function soakingText({ soakingWater }: GeleeValues): string | null {
  return (
    soakingWater && rangeText(soakingWater.minG, soakingWater.maxG, (massG) => `${fixedText(massG, 0)} g`)
  );
}

/** Jelly for the room a filling leaves. */
export function underCrustText({ underCrust }: GeleeValues): string | null {
  return underCrust && rangeText(underCrust.minMl, underCrust.maxMl, (ml) => `${fixedText(ml, 0)} mL`);
}

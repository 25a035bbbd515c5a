import type { Spread } from '@larderwright/calc/yield';
import * as say from '#words/trim-and-yield/spread-text.ts';

/**
 * How far several trials lie apart: "66.0 % to 72.0 %, standard deviation 3.1 %, 3 trials". One trial says that it is
 * one.
 */
export function spreadText(spread: Spread, text: (value: number) => string): string {
  const { count, sampleSd, min, max } = spread;
  if (count === 1 || sampleSd === null) return say.oneTrialNoSpread;
  return say.toStandardDeviationTrials(text(min), text(max), text(sampleSd), count);
}

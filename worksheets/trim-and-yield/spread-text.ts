import type { Spread } from '@larderwright/calc/yield';

/**
 * How far several trials lie apart: "66.0 % to 72.0 %, standard deviation 3.1 %, 3 trials". One trial says that it is
 * one.
 */
export function spreadText(spread: Spread, text: (value: number) => string): string {
  const { count, sampleSd, min, max } = spread;
  if (count === 1 || sampleSd === null) return 'One trial: no spread.';
  return `${text(min)} to ${text(max)}, standard deviation ${text(sampleSd)}, ${count} trials.`;
}

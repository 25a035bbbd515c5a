import type { CheckedReading } from '@larderwright/calc/probe-log';

/** Readings one strip of the sheet holds. */
export const STRIP = 12;

/**
 * The readings that decide, at most a strip of them unless more are asked for: those around the given moments first, then the first,
 * the hottest and the last, and what room is left spread evenly over the rest. A short log prints whole.
 *
 * @param moments instants a verdict turns on, ms
 */
export function decisive(
  readings: readonly CheckedReading[],
  moments: readonly number[],
  most = STRIP,
): CheckedReading[] {
  if (readings.length <= most) return [...readings];
  const chosen = new Set<number>();
  const choose = (index: number) => {
    if (chosen.size < most && index >= 0 && index < readings.length) chosen.add(index);
  };
  for (const moment of moments) {
    const after = readings.findIndex((reading) => reading.atMs >= moment);
    const first = after < 0 ? readings.length - 1 : after;
    choose(first);
    choose(first - 1);
  }
  choose(0);
  choose(readings.length - 1);
  choose(hottest(readings));
  const step = (readings.length - 1) / (most - 1);
  for (let place = 0; place < most; place += 1) choose(Math.round(place * step));
  for (let index = 0; index < readings.length; index += 1) choose(index);
  return [...chosen].sort((a, b) => a - b).flatMap((index) => readings[index] ?? []);
}

function hottest(readings: readonly CheckedReading[]): number {
  let best = 0;
  for (const [index, reading] of readings.entries()) {
    if ((reading.tempC ?? Number.NEGATIVE_INFINITY) > (readings[best]?.tempC ?? Number.NEGATIVE_INFINITY))
      best = index;
  }
  return best;
}

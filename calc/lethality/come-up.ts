import type { HoldReading } from './judge-hold.ts';

/** From 10 °C to 130 °F in 6 h: beyond it Staphylococcus may make a toxin that cooking leaves. FSIS, Appendix A. */
export const COME_UP = { fromC: 10, toC: ((130 - 32) * 5) / 9, maxMin: 360 } as const;

const MS_PER_MIN = 60_000;

export interface ComeUp {
  /** Longest the readings allow: last one at or below 10 °C to the first at or above 54.4 °C, min. Null: not shown. */
  readonly minutes: number | null;
  /** The log begins above 10 °C, so the time is counted from its first reading and is a least. */
  readonly startUnknown: boolean;
  readonly state: 'within' | 'over' | 'unknown';
}

/** How long the core took through the warm zone, from readings alone. */
export function comeUp(readings: readonly HoldReading[]): ComeUp {
  const sound = readings.filter((reading) => reading.counts && reading.tempC !== null);
  const hot = sound.find((reading) => (reading.tempC ?? 0) >= COME_UP.toC);
  const first = sound.at(0);
  const before = hot ? sound.filter((reading) => reading.atMs < hot.atMs) : sound;
  const cold = before.findLast((reading) => (reading.tempC ?? 0) <= COME_UP.fromC);
  const start = cold ?? first;
  const end = hot ?? sound.at(-1);
  if (!start || !end || start === hot) return { minutes: null, startUnknown: true, state: 'unknown' };
  const minutes = (end.atMs - start.atMs) / MS_PER_MIN;
  const startUnknown = cold === undefined;
  if (minutes > COME_UP.maxMin) return { minutes, startUnknown, state: 'over' };
  return { minutes: hot ? minutes : null, startUnknown, state: hot && !startUnknown ? 'within' : 'unknown' };
}

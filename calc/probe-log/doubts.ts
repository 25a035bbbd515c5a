import type { Doubt } from './checked-reading.ts';

/**
 * What a core cannot do. Common practice, no source: wide enough to leave thin sausages in ice alone, so a probe that
 * slides out slowly is not found by them.
 */
export const CORE_BOUNDS = {
  /** Above the boil at sea level, with room for a probe's error. Pressure cookers are outside this notebook. */
  hottestC: 105,
  coldestC: -40,
  /** A step larger than `jumpC` at a rate above `jumpCPerMin`. */
  jumpC: 10,
  jumpCPerMin: 15,
  /** Under or over both neighbours, which stand no further apart than `neighboursMin`. */
  dipC: 8,
  spikeC: 15,
  neighboursMin: 30,
  /** Over the hottest medium written down. */
  aboveMediumC: 5,
} as const;

const MS_PER_MIN = 60_000;

export interface Placed {
  readonly atMs: number;
  readonly tempC: number;
}

/** Doubt that one figure raises on its own. */
export function figureDoubt(tempC: number, hottestMediumC: number | null): Doubt | null {
  if (tempC > CORE_BOUNDS.hottestC) return 'too-hot';
  if (tempC < CORE_BOUNDS.coldestC) return 'too-cold';
  return hottestMediumC !== null && tempC > hottestMediumC + CORE_BOUNDS.aboveMediumC ? 'above-medium' : null;
}

/** Doubt that a figure raises beside the ones before and after it. */
export function neighbourDoubt(
  before: Placed | undefined,
  here: Placed,
  after: Placed | undefined,
): Doubt | null {
  if (!before || !after) return null;
  if (after.atMs - before.atMs > CORE_BOUNDS.neighboursMin * MS_PER_MIN) return null;
  if (here.tempC < Math.min(before.tempC, after.tempC) - CORE_BOUNDS.dipC) return 'dip';
  return here.tempC > Math.max(before.tempC, after.tempC) + CORE_BOUNDS.spikeC ? 'spike' : null;
}

/** Doubt that a step from the last sound reading raises. */
export function stepDoubt(before: Placed | undefined, here: Placed): Doubt | null {
  if (!before) return null;
  const step = Math.abs(here.tempC - before.tempC);
  const minutes = (here.atMs - before.atMs) / MS_PER_MIN;
  return step > CORE_BOUNDS.jumpC && step > CORE_BOUNDS.jumpCPerMin * minutes ? 'jump' : null;
}

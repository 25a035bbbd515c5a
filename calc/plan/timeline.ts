import { wallMin, wallStamp } from './wall-time.ts';

/** A step's durations, min. Null is unknown. */
export interface StepDuration {
  readonly id: string;
  readonly leastMin: number | null;
  /** The same as the least where the step always takes as long. */
  readonly mostMin: number | null;
}

/** When a step may run. Wall-clock stamps; null where a duration from here on is unknown. */
export interface TimedStep {
  readonly id: string;
  readonly leastMin: number | null;
  readonly mostMin: number | null;
  /** Starting earlier would leave it lying about longer than the steps allow. */
  readonly earliestStart: string | null;
  /** Starting later is too late even if every step is as short as it can be. */
  readonly latestStart: string | null;
  readonly latestEnd: string | null;
}

/**
 * Backwards from the table: the last step ends when it is served, each step before it ends when the next begins.
 * Latest start = serving − Σ least of this and all later steps; earliest start = serving − Σ most of them.
 * Derived. Dates only: no clock is read, days and nights are alike.
 *
 * @param servingAt wall-clock stamp; what is no date gives a timeline without times
 */
export function backwardsTimeline(servingAt: string | null, steps: readonly StepDuration[]): TimedStep[] {
  const servingMin = wallMin(servingAt);
  const timed: TimedStep[] = [];
  let latest = servingMin;
  let earliest = servingMin;
  for (const step of [...steps].reverse()) {
    const end = latest;
    latest = latest === null || step.leastMin === null ? null : latest - step.leastMin;
    earliest = earliest === null || step.mostMin === null ? null : earliest - step.mostMin;
    timed.unshift({
      ...step,
      earliestStart: earliest === null ? null : wallStamp(earliest),
      latestStart: latest === null ? null : wallStamp(latest),
      latestEnd: latest === null || end === null ? null : wallStamp(end),
    });
  }
  return timed;
}

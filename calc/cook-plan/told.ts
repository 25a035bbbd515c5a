import type { PlanBand, PlanBands } from './band.ts';
import type { PlanProblem } from './problem.ts';
import type { PlanOutcome } from './values.ts';

/** A predicted figure with its band, as it is kept. Null: never, in that draw. */
export interface ToldFigure {
  low: number | null;
  middle: number | null;
  high: number | null;
}

/**
 * What a plan predicted when somebody kept it for the sheet, as it stood: derived, like the assessment of an issued
 * sheet, and never read by any verdict.
 */
export interface ToldPlan {
  /** ISO date-time. */
  at: string;
  calcVersion: string;
  /** Checksum of the problem it was told for. */
  ofPlan: string;
  /** °C. */
  targetC: number;
  /** Minutes after it goes in. */
  target: ToldFigure;
  heatEnd: ToldFigure;
  /** °C. */
  peak: ToldFigure;
}

const kept = (value: number | null) => (value !== null && Number.isFinite(value) ? value : null);
const figure = (middle: number | null, { low, high }: PlanBand): ToldFigure => ({
  low: kept(low),
  middle: kept(middle),
  high: kept(high),
});

/** The figures of a computed plan, to be kept: its own in the middle, those of the band at the edges. */
export function toldPlan(
  { targetC }: PlanProblem,
  { prediction }: PlanOutcome,
  bands: PlanBands,
  kept: Pick<ToldPlan, 'at' | 'calcVersion' | 'ofPlan'>,
): ToldPlan {
  return {
    ...kept,
    targetC,
    target: figure(prediction.targetMin, bands.targetMin),
    heatEnd: figure(prediction.targetMin === null ? null : prediction.heatEndMin, bands.heatEndMin),
    peak: figure(prediction.peak.tempC, bands.peakC),
  };
}

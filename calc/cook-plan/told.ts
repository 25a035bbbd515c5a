import type { PlanBand, PlanBands } from './band.ts';
import type { PlanProblem } from './problem.ts';
import type { ToldFigure, ToldPlan } from './slice.ts';
import type { PlanOutcome } from './values.ts';

const kept = (value: number | null) => (value !== null && Number.isFinite(value) ? value : null);
const figure = (middle: number | null, { low, high }: PlanBand): ToldFigure => ({
  low: kept(low),
  middle: kept(middle),
  high: kept(high),
});

/** The figures of a computed plan, to be kept: its own in the middle, those of the band at the edges. */
export function toldPlan(
  { targetC }: PlanProblem,
  { prediction }: Pick<PlanOutcome, 'prediction'>,
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

import type { PlanBands, PlanGround, PlanOutcome } from '@larderwright/calc/cook-plan';
import { exactC, firstAtOrBelow } from '@larderwright/calc/cooling';
import * as say from '#words/cook-plan/plan-chart.ts';
import type { CurveModel, CurveMoment, CurvePoint, CurveSeries, WindowLeg } from '../charts/index.ts';
import { timeText } from '../charts/time-text.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { degreesText } from './text.ts';

const MINUTE_MS = 60_000;
/** The wall is of no hour: time counts from when the mould goes in. */
const ELAPSED = { clock: 'elapsed', offsetMin: 0 } as const;

/** Points of one curve, thinned to what a drawing can show. */
function pointsOf(
  id: string,
  timesMin: Float64Array,
  tempC: Float64Array,
  keep: (timeMin: number) => boolean = () => true,
): CurvePoint[] {
  return Array.from(timesMin, (timeMin, i) => ({
    id: `${id}-${i}`,
    atMs: timeMin * MINUTE_MS,
    tempC: tempC[i] ?? Number.NaN,
    mark: 'taken' as const,
  })).filter(({ atMs, tempC: at }) => Number.isFinite(at) && keep(atMs / MINUTE_MS));
}

function seriesOf({ timesMin, coreC, hottestC, bathC, prediction }: PlanOutcome): CurveSeries[] {
  const series: CurveSeries[] = [
    { id: 'core', name: say.coldestSpot, points: pointsOf('core', timesMin, coreC), predicted: true },
    {
      id: 'hottest',
      name: say.lastToCool,
      points: pointsOf('hottest', timesMin, hottestC, (min) => min >= prediction.heatEndMin),
      predicted: true,
    },
    { id: 'bath', name: say.bath, points: pointsOf('bath', timesMin, bathC), predicted: true },
  ];
  return series.filter(({ points }) => points.length > 1);
}

/** The legs of the cooling rule as the predicted curve starts their clocks. */
function windowOf({ coolSet }: PlanGround, { timesMin, hottestC, prediction }: PlanOutcome): WindowLeg[] {
  const points = Array.from(timesMin, (timeMin, i) => ({ timeMin, tempC: hottestC[i] ?? Number.NaN })).filter(
    ({ timeMin }) => timeMin >= prediction.heatEndMin,
  );
  return (coolSet?.legs ?? []).flatMap((leg) => {
    const fromC = leg.from === null ? null : exactC(leg.from);
    const startMin =
      fromC === null ? prediction.heatEndMin : firstAtOrBelow({ kind: 'lines', points }, fromC);
    if (startMin === null) return [];
    const byMs = (startMin + leg.maxMin) * MINUTE_MS;
    return [
      {
        fromMs: startMin * MINUTE_MS,
        byMs,
        fromC,
        toC: exactC(leg.to),
        label: say.by2(limitTemp(leg.to, 'maximum').celsius, timeText(ELAPSED, byMs)),
      },
    ];
  });
}

/** Out of the heat, and into the first cold. */
function momentsOf({ marks, prediction }: PlanOutcome): CurveMoment[] {
  const chill = marks.find(({ kind }) => kind === 'chill');
  const moments = [{ atMs: prediction.heatEndMin * MINUTE_MS, label: say.out }];
  return chill ? [...moments, { atMs: chill.startMin * MINUTE_MS, label: say.chill }] : moments;
}

function levelsOf({ limit, targetC }: PlanGround): CurveModel['levels'] {
  const levels = [];
  if (limit)
    levels.push({
      kind: 'limit' as const,
      tempC: limit.thresholdC,
      label: say.limit2(limitTemp(limit.limit.stated, 'minimum').text),
    });
  if (targetC !== null && (limit === null || Math.abs(targetC - limit.thresholdC) > 0.05))
    levels.push({ kind: 'act' as const, tempC: targetC, label: say.target2(degreesText(targetC)) });
  return levels;
}

function corridorOf(bands: PlanBands | null, endMin: number): CurveModel['corridor'] {
  if (bands === null) return undefined;
  const { timesMin, lowC, highC } = bands.corridor;
  const points = Array.from(timesMin, (timeMin, i) => ({
    atMs: timeMin * MINUTE_MS,
    lowC: lowC[i] ?? Number.NaN,
    highC: highC[i] ?? Number.NaN,
  })).filter(({ atMs }) => atMs <= endMin * MINUTE_MS);
  return { label: say.nineTenKitchensDrawnColdest, points };
}

/** The plan as a chart. */
export function planChart(ground: PlanGround, outcome: PlanOutcome, bands: PlanBands | null): CurveModel {
  const corridor = corridorOf(bands, outcome.prediction.endMin);
  return {
    ...ELAPSED,
    series: seriesOf(outcome),
    ...(levelsOf(ground) ? { levels: levelsOf(ground) ?? [] } : {}),
    window: windowOf(ground, outcome),
    moments: momentsOf(outcome),
    ...(corridor ? { corridor } : {}),
  };
}

/** What is tried out beside the plan. */
export function trialChart(ground: PlanGround, plan: PlanOutcome, trial: PlanOutcome | null): CurveModel {
  const own = {
    id: 'plan',
    name: say.asPlanned,
    points: pointsOf('plan', plan.timesMin, plan.coreC),
    predicted: true,
  };
  if (trial === null) return { ...ELAPSED, series: [own], levels: levelsOf(ground) ?? [] };
  const tried = pointsOf('trial', trial.timesMin, trial.coreC);
  return {
    ...ELAPSED,
    series: [{ id: 'trial', name: say.tried, points: tried, predicted: true }, own],
    levels: levelsOf(ground) ?? [],
    moments: momentsOf(trial),
  };
}

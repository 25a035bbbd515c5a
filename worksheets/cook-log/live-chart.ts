import type { LiveForecast } from '@larderwright/calc/cook-plan';
import * as say from '#words/cook-log/live-chart.ts';
import type { CurveModel, CurvePoint } from '../charts/index.ts';
import type { LiveInput } from './live-run.ts';

const MINUTE_MS = 60_000;
/** The forecast is drawn this far past the end of the heat, min: the chill has a chart of its own. */
const AFTER_HEAT_MIN = 60;

/** The readings, and the forecast with its band beside the plan it came from. */
export function liveChart(
  cookChart: CurveModel,
  { startMs }: LiveInput,
  { outcome, bands, planned }: LiveForecast,
): CurveModel {
  const untilMin = outcome.prediction.heatEndMin + AFTER_HEAT_MIN;
  const points = (id: string, timesMin: Float64Array, tempC: Float64Array): CurvePoint[] =>
    Array.from(timesMin, (timeMin, i) => ({
      id: `${id}-${i}`,
      atMs: startMs + timeMin * MINUTE_MS,
      tempC: tempC[i] ?? Number.NaN,
      mark: 'taken' as const,
    })).filter((_, i) => (timesMin[i] ?? 0) <= untilMin);
  const { timesMin, lowC, highC } = bands.corridor;
  return {
    ...cookChart,
    series: [
      ...cookChart.series,
      {
        id: 'forecast',
        name: say.forecast,
        points: points('forecast', outcome.timesMin, outcome.coreC),
        predicted: true,
      },
      {
        id: 'planned',
        name: say.asPlanned,
        points: points('planned', planned.timesMin, planned.coreC),
        predicted: true,
      },
    ],
    corridor: {
      label: say.nineTenKitchensReadingsAllow,
      points: Array.from(timesMin, (timeMin, i) => ({
        atMs: startMs + timeMin * MINUTE_MS,
        lowC: lowC[i] ?? Number.NaN,
        highC: highC[i] ?? Number.NaN,
      })).filter((_, i) => (timesMin[i] ?? 0) <= untilMin),
    },
    moments: [
      ...(cookChart.moments ?? []),
      { atMs: startMs + outcome.prediction.heatEndMin * MINUTE_MS, label: say.pullForecast },
    ],
  };
}

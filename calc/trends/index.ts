export { type BatchFigures, batchFigures, type LegFigure } from './batch-figures.ts';
export {
  type ControlChart,
  type ControlLimits,
  type ControlPoint,
  controlChart,
  LEAST_BATCHES,
  SETTLED_BATCHES,
} from './control-chart.ts';
export { type CookTimes, median, type OvenBias, ovenBias, timeRatio } from './oven-bias.ts';
export type { RunSignal } from './run-signals.ts';

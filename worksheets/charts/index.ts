export { CurveChart } from './curve-chart.tsx';
export { FittedChart } from './fitted-chart.tsx';
export type * from './model.ts';
export { curveSummary } from './summary.ts';

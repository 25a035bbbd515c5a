export { FittedChart } from './fitted-chart.tsx';
export type * from './model.ts';

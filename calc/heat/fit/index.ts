export { type Adjustment, adjustStage, SPREAD, UNADJUSTED } from './adjust.ts';
export { coreOfRun, type Fit, fitToReadings, type Reading } from './fit.ts';
export { type Band, drawAdjustment, type Forecast, forecast, pullAtC } from './forecast.ts';

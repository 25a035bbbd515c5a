export type { BatchThermal } from './batch-thermal.ts';
export { axisTemperatures, extremeOnAxis, type Spot } from './centre-line.ts';
export type { Coating, Layer, Network } from './network.ts';
export type { BodySpot, HeatRun, Picture, StageMark } from './record.ts';
export { type SimulateOptions, simulate, TIERS, type Tier } from './simulate.ts';

export { type Face, type HeatShape, solidOfShape } from './mesh/index.ts';
export * from './properties/index.ts';
export * from './solve/index.ts';
export * from './stages/index.ts';

export type { Face, Section } from './section.ts';
export { type HeatShape, heightMm, solidOfShape } from './shape.ts';
export type { Patch, Solid } from './solid.ts';

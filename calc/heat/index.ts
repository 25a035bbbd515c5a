export * from './fit/index.ts';
export { type Face, type HeatShape, solidOfShape } from './mesh/index.ts';
export {
  airGap,
  fatLining,
  foodLayer,
  type MouldCoating,
  mouldLayers,
  pastry,
  WALLS,
  type WallMaterial,
  wallLayer,
} from './mould-layers.ts';
export * from './properties/index.ts';
export * from './solve/index.ts';
export * from './stages/index.ts';

import type { MouldDimension, MouldShape } from './slice.ts';

/** Which inside measures a shape needs: all of `needed`, and exactly one of `oneOf` where it names any. */
export interface ShapeDimensions {
  readonly needed: readonly MouldDimension[];
  readonly oneOf: readonly MouldDimension[];
}

const DIMENSIONS: Readonly<Record<MouldShape, ShapeDimensions>> = {
  rectangular: { needed: ['length', 'width', 'depth'], oneOf: [] },
  tapered: { needed: ['length', 'width', 'baseLength', 'baseWidth', 'depth'], oneOf: [] },
  'half-cylinder': { needed: ['diameter', 'length'], oneOf: [] },
  // A round mould that stands has a depth, a roll that lies has a length.
  cylinder: { needed: ['diameter'], oneOf: ['depth', 'length'] },
  roof: { needed: ['width', 'depth', 'length'], oneOf: [] },
  oval: { needed: ['length', 'width', 'depth'], oneOf: [] },
};

/**
 * The inside measures a shape is described by.
 *
 * @example dimensionsOf('cylinder') // { needed: ['diameter'], oneOf: ['depth', 'length'] }
 */
export function dimensionsOf(shape: MouldShape): ShapeDimensions {
  return DIMENSIONS[shape];
}

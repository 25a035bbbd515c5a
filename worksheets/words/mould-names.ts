import type { LiningKind, MouldDimension, MouldShape } from '@larderwright/calc/mould';

export const SHAPE_NAMES: Readonly<Record<MouldShape, string>> = {
  rectangular: 'Straight-sided loaf or terrine',
  tapered: 'Loaf tin, narrower at the base',
  'half-cylinder': 'Half-round gutter',
  cylinder: 'Round mould, or a roll',
  roof: 'Roof (triangular gutter)',
  oval: 'Oval terrine',
};

/** All inside measures. */
export const DIMENSION_NAMES: Readonly<Record<MouldDimension, string>> = {
  length: 'Length',
  width: 'Width',
  depth: 'Depth',
  baseLength: 'Base length',
  baseWidth: 'Base width',
  diameter: 'Diameter',
};

export const LINING_NAMES: Readonly<Record<LiningKind, string>> = {
  none: 'None',
  fat: 'Back fat sheet',
  bacon: 'Bacon or ham slices',
  caul: 'Caul',
  leaf: 'Leaves (leek, chard, vine)',
  film: 'Film',
  parchment: 'Parchment',
};

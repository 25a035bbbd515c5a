import type { ExtenderKind, PanadeKind, PieceShape } from '@larderwright/calc/binder';

export const PANADE_NAMES: Readonly<Record<PanadeKind, string>> = {
  none: 'No panade',
  bread: 'Bread and milk',
  flour: 'Flour, boiled',
  choux: 'Choux type, flour with egg',
  rice: 'Rice, cooked soft',
  potato: 'Potato, cooked and sieved',
};

export const EXTENDER_NAMES: Readonly<Record<ExtenderKind, string>> = {
  'cereal-starch-milk': 'Cereal, starch, milk powder, whey, soya flour or concentrate',
  'isolated-soy': 'Isolated soya protein',
  caseinate: 'Sodium caseinate',
};

export const PIECE_SHAPE_NAMES: Readonly<Record<PieceShape, string>> = {
  cube: 'Cubes',
  ball: 'Balls, berries, nuts',
  strip: 'Strips laid along',
};

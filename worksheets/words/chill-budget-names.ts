import type { FatHeat, LotKind, PassKind } from '@larderwright/calc/chill-budget';

export const LOT_KIND_NAMES: Readonly<Record<LotKind, string>> = {
  lean: 'Lean',
  mixed: 'Meat with fat',
  fat: 'Fat',
  liquid: 'Liquid',
  ice: 'Ice',
};

export const PASS_KIND_NAMES: Readonly<Record<PassKind, string>> = {
  grind: 'Grind',
  chop: 'Chop',
  mix: 'Mix',
};

export const FAT_HEAT_NAMES: Readonly<Record<FatHeat, string>> = {
  'without-melting': 'Fat as a solid: the mix comes out on the warm side',
  'with-melting': 'Melting of fat counted: 2.07 kJ/(kg·K) on top, 0 to 21 °C (32 to 70 °F)',
};

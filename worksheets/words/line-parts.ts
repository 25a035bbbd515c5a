import type { LinePart } from '@larderwright/calc/formula';

/** What a line does in the mix, in the order of the bench. */
export const PART_NAMES: Readonly<Record<LinePart, string>> = {
  lean: 'Lean',
  fat: 'Fat',
  liver: 'Liver',
  offal: 'Offal',
  panade: 'Panade',
  egg: 'Egg',
  liquid: 'Liquid',
  garnish: 'Garnish',
  seasoning: 'Seasoning',
  salt: 'Salt',
  'curing-salt': 'Curing salt',
  lining: 'Lining',
};

import type { PasteWeights } from '@larderwright/calc/mould';

export const PASTE_PART_NAMES: Readonly<Record<keyof PasteWeights, string>> = {
  flour: 'Flour',
  fat: 'Fat',
  egg: 'Egg',
  water: 'Water',
  salt: 'Salt',
  vinegar: 'Vinegar',
};

const FIELDS: Readonly<Record<string, string>> = {
  'crust.mouldId': 'the mould',
  'crust.thickness': 'the thickness of base and walls',
  'crust.lidThickness': 'the thickness of the lid',
  'crust.overlap': 'the overlap',
  'crust.density': 'the density of the pastry',
  'crust.spare': 'the spare',
  'crust.salt': 'the salt of your own paste',
};

/** What an input of a crust is called in the middle of a sentence. */
export const crustFieldName = (field: string): string => FIELDS[field] ?? 'the measures of the mould';

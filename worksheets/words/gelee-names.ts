import type {
  BloomRule,
  EnzymeFruit,
  GelatineOrigin,
  Gelling,
  JellyUse,
  SheetGrade,
} from '@larderwright/calc/gelee';

export const GELLING_NAMES: Readonly<Record<Gelling, string>> = { gelatine: 'Gelatine', agar: 'Agar' };

export const GELATINE_FORM_NAMES: Readonly<Record<'powder' | 'sheet', string>> = {
  powder: 'Powder or granules',
  sheet: 'Sheets',
};

export const GELATINE_ORIGIN_NAMES: Readonly<Record<GelatineOrigin, string>> = {
  unknown: 'Nobody has read the pack',
  pork: 'Pork',
  beef: 'Beef',
  fish: 'Fish',
};

export const JELLY_USE_NAMES: Readonly<Record<JellyUse, string>> = {
  spoon: 'Chilled and spooned',
  coat: 'Coating, chaud-froid, first coat',
  slice: 'Cubed or sliced',
  inlay: 'Inlay, or a buffet in summer',
};

export const SHEET_GRADE_NAMES: Readonly<Record<SheetGrade, string>> = {
  bronze: 'Bronze',
  silver: 'Silver',
  gold: 'Gold',
  platinum: 'Platinum',
};

export const BLOOM_RULE_NAMES: Readonly<Record<BloomRule, string>> = {
  'square-root': 'Square root: both jellies equally firm',
  linear: 'Linear: the kitchen shortcut',
};

export const ENZYME_FRUIT_NAMES: Readonly<Record<EnzymeFruit, string>> = {
  pineapple: 'Pineapple',
  papaya: 'Papaya',
  kiwi: 'Kiwi',
  fig: 'Fig',
  mango: 'Mango',
  ginger: 'Ginger',
  melon: 'Melon',
};

/** What an input of a jelly is called in the middle of a sentence, by its place in the batch. */
export const GELEE_FIELD_NAMES: Readonly<Record<string, string>> = {
  'gelee.liquid': 'the liquid',
  'gelee.strength': 'the strength',
  'gelee.strengthBloom': 'the bloom the strength is told for',
  'gelee.bloom': 'the bloom off the pack',
  'gelee.naturalSet': 'what the stock sets by itself',
  'gelee.alcohol': 'the alcohol in it',
  'gelee.ph': 'the pH of the liquid',
  'gelee.sheetMass': 'the weight of a sheet',
};

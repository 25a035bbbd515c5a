import type { ExpressedAs, WeightBasis } from '@larderwright/calc/cure';

/** What a limit is counted on. */
export const BASIS_WORDS: Readonly<Record<WeightBasis, string>> = {
  'meat-block': 'raw meat, fat, liver and offal',
  total: 'everything in the bowl',
  finished: 'the finished product',
};

/** The form a limit's figure is written in. */
export const FORM_WORDS: Readonly<Record<ExpressedAs, string>> = {
  'sodium-nitrite': 'as sodium nitrite',
  'nitrite-ion': 'as nitrite ion',
  'nitrite-and-nitrate-salts': 'nitrite and nitrate salts together',
  'nitrite-and-nitrate-as-sodium-nitrite': 'nitrite and nitrate together, as sodium nitrite',
  'sodium-ascorbate-or-erythorbate': 'sodium ascorbate or erythorbate',
};

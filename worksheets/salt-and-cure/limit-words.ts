import type { ExpressedAs, WeightBasis } from '@larderwright/calc/cure';
import * as say from '#words/salt-and-cure/limit-words.ts';

/** What a limit is counted on. */
export const BASIS_WORDS: Readonly<Record<WeightBasis, string>> = {
  'meat-block': say.rawMeatFatLiverAndOffal,
  total: say.everythingInTheBowl,
  finished: say.theFinishedProduct,
};

/** The form a limit's figure is written in. */
export const FORM_WORDS: Readonly<Record<ExpressedAs, string>> = {
  'sodium-nitrite': say.asSodiumNitrite,
  'nitrite-ion': say.asNitriteIon,
  'nitrite-and-nitrate-salts': say.nitriteAndNitrateSaltsTogether,
  'nitrite-and-nitrate-as-sodium-nitrite': say.nitriteNitrateTogetherSodium,
  'sodium-ascorbate-or-erythorbate': say.sodiumAscorbateOrErythorbate,
};

import type { Batch } from '@larderwright/calc/batch';
import { countryTerrine } from './country-terrine.ts';
import { liverParfait } from './liver-parfait.ts';
import { muttonHam } from './mutton-ham.ts';
import { pateEnCroute } from './pate-en-croute.ts';
import { troutMousseline } from './trout-mousseline.ts';

/** The invented batches a reader can open, by the slug in the address. */
export const demos: Readonly<Record<string, Batch>> = {
  'country-terrine': countryTerrine,
  'liver-parfait': liverParfait,
  'pate-en-croute-cooling-fails': pateEnCroute,
  'mutton-ham': muttonHam,
  'trout-mousseline': troutMousseline,
};

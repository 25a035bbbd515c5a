import type { Batch } from '@larderwright/calc/batch';
import { countryTerrine } from './country-terrine.ts';
import { pateEnCroute } from './pate-en-croute.ts';

/** The invented batches a reader can open, by the slug in the address. */
export const demos: Readonly<Record<string, Batch>> = {
  'country-terrine': countryTerrine,
  'pate-en-croute-cooling-fails': pateEnCroute,
};

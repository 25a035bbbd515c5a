import * as v from 'valibot';
import { entry } from './shared.ts';

/** Slicing, if somebody planned it. */
export const slicing = v.strictObject({
  cutBy: v.picklist(['thickness', 'mass'] as const),
  length: entry,
  thickness: entry,
  endTrim: entry,
  kerf: entry,
  slicesPerPortion: entry,
  packMass: entry,
  endLoss: entry,
});

import * as v from 'valibot';
import { entry, list, stamp } from './shared.ts';

/** Casings and links, if somebody filled any. */
export const casings = v.strictObject({
  casingId: stamp,
  batch: entry,
  stuffedDiameter: entry,
  density: entry,
  fullness: entry,
  spare: entry,
  linkBy: v.picklist(['mass', 'length'] as const),
  linkMass: entry,
  linkLength: entry,
  strandLength: entry,
  hankLength: entry,
  actualLinks: list(entry),
});

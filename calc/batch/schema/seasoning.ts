import * as v from 'valibot';
import { entry, list, stamp, text } from './shared.ts';

const form = v.picklist(['ground', 'whole', 'dried', 'fresh', 'cooked', 'plain'] as const);

/** Blends by parts and seasonings added by themselves. */
export const seasoning = v.strictObject({
  batch: entry,
  blends: list(
    v.strictObject({
      id: text,
      name: text,
      items: list(v.strictObject({ id: text, spiceId: stamp, name: text, form, parts: entry, salt: entry })),
      dose: entry,
      stockTimes: entry,
      groundOn: text,
    }),
  ),
  loose: list(v.strictObject({ id: text, spiceId: stamp, name: text, form, dose: entry, salt: entry })),
  scaleReadability: entry,
  diluteInSalt: v.boolean(),
  grindingLoss: entry,
  timesTasted: entry,
});

import * as v from 'valibot';
import { entry, list } from './shared.ts';

/** A jelly, if somebody set one. */
export const gelee = v.strictObject({
  liquid: entry,
  use: v.picklist(['spoon', 'coat', 'slice', 'inlay'] as const),
  gelling: v.picklist(['gelatine', 'agar'] as const),
  strength: entry,
  strengthBloom: entry,
  form: v.picklist(['powder', 'sheet'] as const),
  bloom: entry,
  sheetGrade: v.picklist(['bronze', 'silver', 'gold', 'platinum'] as const),
  sheetMass: entry,
  rule: v.picklist(['square-root', 'linear'] as const),
  naturalSet: entry,
  ph: entry,
  alcohol: entry,
  sugar: entry,
  rawFruit: list(v.picklist(['pineapple', 'papaya', 'kiwi', 'fig', 'mango', 'ginger', 'melon'] as const)),
  origin: v.picklist(['pork', 'beef', 'fish', 'unknown'] as const),
  cavity: entry,
  pour: entry,
  core: entry,
});

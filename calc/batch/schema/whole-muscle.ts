import * as v from 'valibot';
import { entry, text } from './shared.ts';

/** What dry cure and brine both say of the meat. */
export const product = v.nullable(v.picklist(['bacon', 'ham', 'other'] as const));
export const finish = v.nullable(v.picklist(['cooked', 'cook-before-eating', 'dried-raw'] as const));

/** A curing salt by its pack. */
export const pack = v.strictObject({
  name: text,
  lot: text,
  strength: v.strictObject({ nitrite: entry, nitrate: entry }),
});

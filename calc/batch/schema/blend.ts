import * as v from 'valibot';
import { declared, entry, linePart, list, stamp, text } from './shared.ts';

const band = v.strictObject({ min: entry, max: entry });

const material = v.strictObject({
  id: text,
  name: text,
  part: linePart,
  ingredientId: stamp,
  declared,
  price: entry,
  priceBasis: v.picklist(['kg', 'lb'] as const),
  stock: entry,
  minShare: entry,
  maxShare: entry,
  locked: entry,
});

/** Lean and fat, if somebody began to balance them. */
export const blend = v.strictObject({
  materials: list(material),
  total: entry,
  freeA: stamp,
  freeB: stamp,
  fatTarget: entry,
  standard: v.exactOptional(v.strictObject({ nameId: stamp, yield: entry, asBounds: v.boolean() })),
  bands: v.strictObject({ fat: band, protein: band, salt: band, liver: band, 'water-to-protein': band }),
});

import * as v from 'valibot';
import { entry, list, stamp, text } from './shared.ts';

const part = { id: text, name: text, ingredientId: stamp, amount: entry, salt: entry, water: entry };

/** Panade, egg, cream, extenders and garnish. */
export const binder = v.strictObject({
  meat: entry,
  panadeKind: v.picklist(['none', 'bread', 'flour', 'choux', 'rice', 'potato'] as const),
  panadeShare: entry,
  panadeParts: list(v.strictObject(part)),
  panadeLoss: entry,
  panadeCooked: entry,
  panadeTemp: entry,
  egg: entry,
  eggIngredientId: stamp,
  cream: entry,
  creamIngredientId: stamp,
  extenders: list(
    v.strictObject({
      ...part,
      kind: v.picklist(['cereal-starch-milk', 'isolated-soy', 'caseinate'] as const),
    }),
  ),
  usNamedSausage: v.boolean(),
  garnish: list(
    v.strictObject({
      id: text,
      name: text,
      ingredientId: stamp,
      asBought: entry,
      prepYield: entry,
      prepared: entry,
      salt: entry,
      water: entry,
      density: entry,
      shape: v.picklist(['cube', 'ball', 'strip'] as const),
      pieceSize: entry,
      laidCount: entry,
      dried: v.boolean(),
      rawAllium: v.boolean(),
    }),
  ),
  mouldWidth: entry,
  mouldHeight: entry,
  sliceThickness: entry,
});

import * as v from 'valibot';
import { entry, list, stamp, text } from './shared.ts';

const line = v.strictObject({
  lineId: text,
  price: entry,
  priceBasis: v.picklist(['kg', 'lb', 'each', 'sundries'] as const),
  eachMass: entry,
  trimYield: entry,
});

const step = v.strictObject({
  id: text,
  kind: v.picklist([
    ...(['receive', 'thaw', 'trim', 'cure', 'panade', 'temper', 'grind-and-mix', 'fill'] as const),
    ...(['cook', 'press-and-chill', 'keep', 'slice', 'other'] as const),
  ]),
  name: text,
  least: entry,
  most: entry,
});

/** Plan and cost, if somebody began one. */
export const plan = v.strictObject({
  want: v.picklist(['portions', 'finished', 'moulds'] as const),
  portionMass: entry,
  finished: entry,
  cookLoss: entry,
  endLoss: entry,
  residue: entry,
  testPoach: entry,
  lines: list(line),
  sundries: entry,
  labour: entry,
  labourRate: entry,
  overhead: entry,
  pricing: v.picklist(['gross-profit', 'food-cost', 'margin'] as const),
  grossProfit: entry,
  foodCost: entry,
  margin: entry,
  tax: entry,
  currency: text,
  servingAt: stamp,
  steps: list(step),
  chillerCapacity: entry,
  bathCapacity: entry,
});

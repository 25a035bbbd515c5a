import * as v from 'valibot';
import { entry, list, text } from './shared.ts';
import { finish, pack, product } from './whole-muscle.ts';

const piece = v.strictObject({
  id: text,
  name: text,
  skinOff: entry,
  skinOn: entry,
  thickness: entry,
  saltActual: entry,
  curingSaltActual: entry,
  sugarActual: entry,
  now: entry,
});

/** Dry cure of whole muscle. */
export const dryCure = v.strictObject({
  product,
  finish,
  isTraditional: v.boolean(),
  method: v.picklist(['equilibrium', 'salt-box', 'rub'] as const),
  pieces: list(piece),
  saltTarget: entry,
  sugar: entry,
  nitriteTarget: entry,
  pack,
  chillTemp: entry,
  startedOn: text,
  lossTarget: entry,
});

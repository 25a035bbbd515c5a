import * as v from 'valibot';
import { entry, list, stamp, text } from './shared.ts';

/** What goes into grinder and bowl, and how cold. */
export const chillBudget = v.strictObject({
  lots: list(
    v.strictObject({
      id: text,
      name: text,
      kind: v.picklist(['lean', 'mixed', 'fat', 'liquid', 'ice'] as const),
      mass: entry,
      temp: entry,
      fat: entry,
      beforePassId: stamp,
    }),
  ),
  passes: list(
    v.strictObject({ id: text, kind: v.picklist(['grind', 'chop', 'mix'] as const), rise: entry }),
  ),
  fatHeat: v.picklist(['without-melting', 'with-melting'] as const),
  limit: entry,
  iceTemp: entry,
  liquidAllowance: entry,
  room: entry,
  layer: entry,
  cube: entry,
  freezer: entry,
});

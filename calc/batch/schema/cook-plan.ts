import * as v from 'valibot';
import { entry, list, stamp, text } from './shared.ts';

const chillLeg = v.strictObject({
  id: text,
  kind: v.picklist(['ice-bath', 'stirred-ice-bath', 'blast', 'refrigerate'] as const),
  temp: entry,
  minutes: entry,
  until: entry,
  standing: v.picklist(['apart', 'stacked'] as const),
  top: v.picklist(['open', 'covered'] as const),
});

const told = v.nullable(v.number());
const toldFigure = v.strictObject({ low: told, middle: told, high: told });

/** The cook plan, if somebody began one. */
export const cookPlan = v.strictObject({
  mouldId: stamp,
  vessel: v.picklist([
    ...(['stoneware', 'porcelain', 'glass', 'cast-iron', 'stainless-steel'] as const),
    ...(['tinplate', 'aluminium', 'silicone', 'none'] as const),
  ]),
  wall: entry,
  lid: v.picklist(['open', 'foil', 'lid'] as const),
  water: entry,
  protein: entry,
  fat: entry,
  start: entry,
  method: v.picklist(['bath', 'oven', 'steam', 'poach'] as const),
  oven: entry,
  fan: v.picklist(['still', 'fan'] as const),
  steam: entry,
  kettle: entry,
  bathWater: entry,
  bathStart: entry,
  cover: v.picklist(['covered', 'open'] as const),
  panLength: entry,
  panWidth: entry,
  panHeight: entry,
  mouldsInPan: entry,
  level: entry,
  altitude: entry,
  ovenRecord: v.strictObject({ name: text, films: entry, heating: entry, shift: entry }),
  target: entry,
  hold: entry,
  rest: entry,
  room: entry,
  press: entry,
  pressAir: entry,
  chill: list(chillLeg),
  told: v.exactOptional(
    v.strictObject({
      at: text,
      calcVersion: text,
      ofPlan: text,
      targetC: v.number(),
      target: toldFigure,
      heatEnd: toldFigure,
      peak: toldFigure,
    }),
  ),
});

import * as v from 'valibot';
import type { LabelSlice } from '../../label/index.ts';
import { entry, list, stamp, text } from './shared.ts';

const typed = { saturates: entry, carbohydrate: entry, sugars: entry, fibre: entry, alcohol: entry };
const said = { id: text, name: text, madeOf: text, allergens: v.nullable(list(text)) };

/** What the label worksheet keeps of a batch. */
export const label = v.strictObject({
  market: v.nullable(v.picklist(['us', 'eu', 'gb'] as const)),
  name: text,
  maker: text,
  origin: text,
  lines: list(
    v.strictObject({
      ...said,
      stressed: v.boolean(),
      collagen: entry,
      collagenCut: stamp,
      figures: v.strictObject(typed),
    }),
  ),
  extras: list(
    v.strictObject({
      ...said,
      mass: entry,
      figures: v.strictObject({ ...typed, fat: entry, protein: entry, salt: entry }),
    }),
  ),
  filled: entry,
  loss: v.nullable(v.picklist(['nothing', 'water', 'fat-weighed', 'juices'] as const)),
  drainedFat: entry,
  alcohol: stamp,
  serving: entry,
  netWeight: entry,
  pack: v.nullable(v.picklist(['open', 'wrapped', 'vacuum', 'modified-air', 'jar'] as const)),
  hurdle: v.nullable(v.picklist(['heat-90-10', 'salt-3-5', 'aw-0-97', 'ph-5', 'approved-plan'] as const)),
  storeAt: entry,
  dateKind: v.picklist(['use-by', 'best-before'] as const),
  life: entry,
  cookDayCounts: v.boolean(),
  cookedOn: text,
  packedOn: text,
  audience: v.nullable(v.picklist(['general', 'susceptible', 'under-threes'] as const)),
  looksLikeCut: v.boolean(),
}) satisfies v.GenericSchema<unknown, LabelSlice>;

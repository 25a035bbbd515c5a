import type { Entry } from '../quantities/index.ts';

/** Figures of one ingredient per 100 g, read off its pack. They stand in for what the composition table lacks. */
export interface TypedFigures {
  saturates: Entry;
  /** Without fibre. */
  carbohydrate: Entry;
  sugars: Entry;
  fibre: Entry;
  alcohol: Entry;
}

/** What the label needs to know of one line of the formula, by its id. */
export interface LabelLine {
  id: string;
  /** Name in the list. Blank: the proposed one. */
  name: string;
  /** Ingredients of an ingredient that is made of several, as its pack lists them. */
  madeOf: string;
  /** Allergen classes ticked from the pack; null: nobody has said, the table's stand. */
  allergens: string[] | null;
  /** The name, words or picture on the pack stress it: its quantity is declared. */
  stressed: boolean;
  /** Collagen, % of the meat, from an analysis. */
  collagen: Entry;
  /** A cut with published collagen, where there is no analysis. */
  collagenCut: string | null;
  figures: TypedFigures;
}

/** Something on the product that is not in the formula: crust, jelly, a butter seal. */
export interface LabelExtra {
  id: string;
  name: string;
  mass: Entry;
  madeOf: string;
  allergens: string[] | null;
  figures: TypedFigures & { fat: Entry; protein: Entry; salt: Entry };
}

/** A food another worksheet of the batch puts round the mix. What the label says of it is an extra of this id. */
export type CarriedId = 'crust' | 'jelly';

export type LossKind = 'nothing' | 'water' | 'fat-weighed' | 'juices';
export type PackKind = 'open' | 'wrapped' | 'vacuum' | 'modified-air' | 'jar';
export type Hurdle = 'heat-90-10' | 'salt-3-5' | 'aw-0-97' | 'ph-5' | 'approved-plan';
export type Audience = 'general' | 'susceptible' | 'under-threes';
export type Market = 'us' | 'eu' | 'gb';

export interface LabelSlice {
  market: Market | null;
  /** The name of the food. */
  name: string;
  maker: string;
  origin: string;
  lines: LabelLine[];
  extras: LabelExtra[];
  /** Mix that went into the moulds, g. Blank: what the moulds weighed, or the whole bowl. */
  filled: Entry;
  /** What left the food between filling and the finished weight; null: nobody has said. */
  loss: LossKind | null;
  drainedFat: Entry;
  /** How the alcohol was treated, an id of `ALCOHOL_KEPT`. */
  alcohol: string | null;
  serving: Entry;
  netWeight: Entry;
  pack: PackKind | null;
  hurdle: Hurdle | null;
  /** Keep at or below. */
  storeAt: Entry;
  dateKind: 'use-by' | 'best-before';
  life: Entry;
  /** The day of the cook is day one, as the United States Food Code counts. */
  cookDayCounts: boolean;
  /** ISO date of the cook, where no cook is logged. */
  cookedOn: string;
  /** ISO date of packing. It moves nothing. */
  packedOn: string;
  audience: Audience | null;
  /** Looks like a cut, joint or slice of meat or fish: added water above 5 % goes into the name. */
  looksLikeCut: boolean;
}

import type { Entry } from '../quantities/index.ts';

/** What the jelly is for; each wants a firmness. */
export type JellyUse = 'spoon' | 'coat' | 'slice' | 'inlay';

export type Gelling = 'gelatine' | 'agar';

export type SheetGrade = 'bronze' | 'silver' | 'gold' | 'platinum';

/** What the gelatine is made of, for labels and for who may eat it. */
export type GelatineOrigin = 'pork' | 'beef' | 'fish' | 'unknown';

/**
 * How gelatine of one bloom stands in for another. By the root both gels are equally firm; by the product is the
 * kitchen's shortcut. Neither is hidden: the sheet says which was used.
 */
export type BloomRule = 'square-root' | 'linear';

/** Raw plant juices that digest gelatine. */
export type EnzymeFruit = 'pineapple' | 'papaya' | 'kiwi' | 'fig' | 'mango' | 'ginger' | 'melon';

export interface GeleeSlice {
  /** Liquid to set. */
  liquid: Entry;
  use: JellyUse;
  gelling: Gelling;
  /** Of the liquid, g to 100 mL as %. Blank: the middle of what the use wants. */
  strength: Entry;
  /** Bloom the strength is told for. */
  strengthBloom: Entry;
  form: 'powder' | 'sheet';
  /** Bloom of what is at hand, off the pack. Blank with sheets: the middle of the grade. */
  bloom: Entry;
  sheetGrade: SheetGrade;
  /** Mass of one sheet, weighed. Blank: the usual of the grade. */
  sheetMass: Entry;
  rule: BloomRule;
  /** What the stock sets by itself, as gelatine of the liquid; by a plate test. 0: water. */
  naturalSet: Entry;
  /** pH of the liquid by meter or paper. Blank: unknown. */
  ph: Entry;
  /** Alcohol of the liquid, % by volume. */
  alcohol: Entry;
  sugar: Entry;
  rawFruit: EnzymeFruit[];
  origin: GelatineOrigin;
  /** Jelly poured under a crust or round a pâté: room inside, and temperatures at pouring. */
  cavity: Entry;
  pour: Entry;
  core: Entry;
}

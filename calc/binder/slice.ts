import type { Entry } from '../quantities/index.ts';

export type PanadeKind = 'none' | 'bread' | 'flour' | 'choux' | 'rice' | 'potato';

/** Something with a composition: a row of the table, overruled by what is read off the pack. */
export interface BinderPart {
  id: string;
  name: string;
  ingredientId: string | null;
  /** Raw, into the pan or the bowl. */
  amount: Entry;
  /** Off the pack, %. Blank: the table. */
  salt: Entry;
  water: Entry;
}

/** Binders that a federal rule of the United States counts together or by themselves. */
export type ExtenderKind = 'cereal-starch-milk' | 'isolated-soy' | 'caseinate';

export interface Extender extends BinderPart {
  kind: ExtenderKind;
}

export type PieceShape = 'cube' | 'ball' | 'strip';

/** Something folded in or laid in. */
export interface GarnishLine {
  id: string;
  name: string;
  ingredientId: string | null;
  /** As bought, and what peeling, boning and cooking leave of it. */
  asBought: Entry;
  prepYield: Entry;
  /** Ready to fold in, weighed. It outranks the reckoning. */
  prepared: Entry;
  salt: Entry;
  water: Entry;
  /** g/mL. */
  density: Entry;
  shape: PieceShape;
  /** Edge of a cube, diameter of a ball, thickness of a strip. */
  pieceSize: Entry;
  /** Strips laid along the mould, seen in every slice; blank when scattered. */
  laidCount: Entry;
  /** Pressed, patted or baked dry. */
  dried: boolean;
  /** Onion, shallot, garlic, leek, not cooked. */
  rawAllium: boolean;
}

export interface BinderSlice {
  /** Meat block. Blank: the formula's. */
  meat: Entry;
  panadeKind: PanadeKind;
  /** Wanted, cooked and cold, % of the meat. */
  panadeShare: Entry;
  panadeParts: BinderPart[];
  /** Lost in cooking the panade, %. */
  panadeLoss: Entry;
  /** Cooked and cold, weighed. It outranks the reckoning. */
  panadeCooked: Entry;
  panadeTemp: Entry;
  egg: Entry;
  eggIngredientId: string | null;
  cream: Entry;
  creamIngredientId: string | null;
  extenders: Extender[];
  /** Sold in the United States under a sausage name that limits its binders. */
  usNamedSausage: boolean;
  garnish: GarnishLine[];
  /** Inside of the mould and the slice. Blank: the mould's own. */
  mouldWidth: Entry;
  mouldHeight: Entry;
  sliceThickness: Entry;
}

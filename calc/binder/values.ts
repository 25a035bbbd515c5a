import type { Allergen } from '../ingredients/index.ts';
import type { PiecesPerSlice } from './pieces.ts';
import type { ExtenderKind } from './slice.ts';

/** What something brings into the mix, g. Null while some of it is unknown. */
export interface Carried {
  readonly saltG: number | null;
  readonly waterG: number | null;
}

export interface GarnishValues {
  readonly lineId: string;
  readonly preparedG: number | null;
  /** Of the total mix. */
  readonly shareFraction: number | null;
  readonly waterFraction: number | null;
  readonly sizeMm: number | null;
  readonly pieces: PiecesPerSlice | null;
  /** To buy for what is folded in, g; null unless the prepared weight is typed. */
  readonly toBuyG: number | null;
}

export interface PanadeValues {
  readonly rawG: number | null;
  readonly cookedG: number | null;
  /** Cooked, on the meat. */
  readonly shareFraction: number | null;
  /** For the share wanted, cooked and raw, g. */
  readonly wantedCookedG: number | null;
  readonly wantedRawG: number | null;
}

/** Binders a federal rule of the United States limits, on the finished product where its weight is known. */
export interface ExtenderShare {
  readonly kind: ExtenderKind | 'all';
  readonly massG: number | null;
  readonly shareFraction: number | null;
}

export interface BinderValues {
  readonly meatG: number | null;
  readonly totalG: number | null;
  readonly panade: PanadeValues;
  readonly eggG: number | null;
  /** Egg and panade of the total mix; cream of the meat. */
  readonly eggFraction: number | null;
  readonly creamPerMeat: number | null;
  readonly extenders: readonly ExtenderShare[];
  readonly garnish: readonly GarnishValues[];
  readonly garnishFraction: number | null;
  readonly carried: Carried;
  readonly euAllergens: readonly Allergen[];
  readonly usAllergens: readonly Allergen[];
  readonly allergensUnknown: readonly string[];
}

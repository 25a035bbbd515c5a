import type { DeclaredCure } from '../formula/index.ts';
import type { Entry } from '../quantities/index.ts';

/** What a law looks at first: bacon has rules of its own. */
export type WholeMuscleProduct = 'bacon' | 'ham' | 'other';

/** How it is eaten: cooked by the kitchen, sold to be cooked, or dried and eaten raw. */
export type WholeMuscleFinish = 'cooked' | 'cook-before-eating' | 'dried-raw';

/** In a closed bag with a weighed cure, buried in salt, or rubbed with a mix in excess. */
export type DryCureMethod = 'equilibrium' | 'salt-box' | 'rub';

/** A curing salt as its pack says. Strength has no default. */
export interface CuringSaltPack {
  name: string;
  lot: string;
  strength: DeclaredCure;
}

/** One piece of meat with its own bag. */
export interface DryCurePiece {
  id: string;
  name: string;
  /** Weight without skin. Outranks `skinOn`. */
  skinOff: Entry;
  /** Weight with its skin, where it stays on. */
  skinOn: Entry;
  /** Thickest place, mm. */
  thickness: Entry;
  /** What the scale showed for this piece, g. */
  saltActual: Entry;
  curingSaltActual: Entry;
  sugarActual: Entry;
  /** Weight on a later day, for loss. */
  now: Entry;
}

/** Dry cure of whole muscle. The rule set, the scale and the two people stand with the cure. */
export interface DryCureSlice {
  product: WholeMuscleProduct | null;
  finish: WholeMuscleFinish | null;
  /** A traditional cure that the rule set names, with limits of its own. */
  isTraditional: boolean;
  method: DryCureMethod;
  pieces: DryCurePiece[];
  /** Salt from all sources, % of the meat. */
  saltTarget: Entry;
  /** Sugar, % of the meat. */
  sugar: Entry;
  /** Wanted nitrite, mg/kg of the meat as sodium nitrite. */
  nitriteTarget: Entry;
  pack: CuringSaltPack;
  chillTemp: Entry;
  /** ISO date or ''. */
  startedOn: string;
  /** Wanted loss of weight in drying, % of the meat. */
  lossTarget: Entry;
}

import type { Entry } from '../../quantities/index.ts';

/** The crust of a pie, all its moulds alike. */
export interface CrustSlice {
  /** Mould of the mould slice; null: the only one there is. */
  mouldId: string | null;
  /** Base and walls, and the lid. */
  thickness: Entry;
  lidThickness: Entry;
  overlap: Entry;
  density: Entry;
  /** Decoration, repair and trimmings, % on top. */
  spare: Entry;
  /** A paste of the table, or null for one of the kitchen's own. */
  pasteId: string | null;
  /** Salt of the kitchen's own paste, % of the pastry. */
  salt: Entry;
  /** Slices that line it, bacon or ham, laid across: width, overlap, mass of one, salt off the pack. Blank: none. */
  pieceWidth: Entry;
  pieceOverlap: Entry;
  pieceMass: Entry;
  pieceSalt: Entry;
}

/** Cubes of lean that go into a freezer, apart from each other. */
export interface TemperRequest {
  readonly cubeMm: number;
  readonly startC: number;
  readonly freezerC: number;
  /** Film between air and meat, W/(m²·K); 12 in a still freezer, more in a blast. */
  readonly filmWm2K: number;
  /** How far ahead is looked, min. */
  readonly longestMin: number;
}

/** How far a cube has frozen, and when. Null: not within the time looked at. */
export interface Tempering {
  /** The middle of a face is firm: ready to grind from here on. */
  readonly firmMin: number | null;
  /** A fifth of its water is ice: out by then. */
  readonly stiffMin: number | null;
  /** Half of its water is ice: too hard for the plate. */
  readonly solidMin: number | null;
  /** Core when the face is firm, °C. */
  readonly coreAtFirmC: number | null;
  readonly longestMin: number;
}

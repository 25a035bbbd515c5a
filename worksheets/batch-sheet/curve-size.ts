/** Sides and margins of a drawn curve, mm. Letters on it are 9 pt, 3.2 mm. */
export interface CurveSize {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The drawing of the record copy. */
export const CURVE_MM: CurveSize = { width: 188, height: 24, left: 11, right: 2, top: 4, bottom: 4.5 };

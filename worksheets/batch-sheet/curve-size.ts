/** The drawing, mm. Letters on it are 9 pt, 3.2 mm. */
export const CURVE_MM = { width: 188, height: 24, left: 11, right: 2, top: 4, bottom: 4.5 } as const;

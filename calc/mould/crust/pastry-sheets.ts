/** A cut of pastry, mm, and what is left of it once its corners are cut out. */
export interface PastrySheet {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly areaMm2: number;
}

/** Pastry for one mould. */
export interface PastrySheets {
  /** Base and sides in one, or the base alone where the sides are a strip. */
  readonly base: PastrySheet;
  /** Strip round an oval or round mould, or null. */
  readonly wall: PastrySheet | null;
  readonly lid: PastrySheet;
  readonly areaMm2: number;
}

function sound(values: readonly number[]): boolean {
  return values.every((value) => value > 0 && Number.isFinite(value));
}

function sheets(base: PastrySheet, wall: PastrySheet | null, lid: PastrySheet): PastrySheets {
  return { base, wall, lid, areaMm2: base.areaMm2 + (wall?.areaMm2 ?? 0) + lid.areaMm2 };
}

/**
 * Pastry for a straight mould: base and sides (L + 2H + 2o) × (W + 2H + 2o) with the four corners cut out, lid
 * (L + 2o) × (W + 2o). Common practice, no source.
 *
 * @param overlapMm reach over the rim, 15–20
 * @returns null for what is no measure
 * @example straightPastry(300, 80, 85, 20) // 510 × 290 and 340 × 120 mm, 0.145 m²
 */
export function straightPastry(
  lengthMm: number,
  widthMm: number,
  heightMm: number,
  overlapMm: number,
): PastrySheets | null {
  if (!sound([lengthMm, widthMm, heightMm]) || !(overlapMm >= 0) || !Number.isFinite(overlapMm)) return null;
  const side = heightMm + overlapMm;
  const base = [lengthMm + 2 * side, widthMm + 2 * side] as const;
  const lid = [lengthMm + 2 * overlapMm, widthMm + 2 * overlapMm] as const;
  return sheets({ lengthMm: base[0], widthMm: base[1], areaMm2: base[0] * base[1] - 4 * side ** 2 }, null, {
    lengthMm: lid[0],
    widthMm: lid[1],
    areaMm2: lid[0] * lid[1],
  });
}

/** Circumference of an oval, mm. Source: Ramanujan's first formula of 1914, from memory; exact for a circle. */
export function ovalRoundMm(lengthMm: number, widthMm: number): number {
  const [a, b] = [lengthMm / 2, widthMm / 2];
  return Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
}

/**
 * Pastry for an oval or round mould: base that laps under the wall by o, strip round it that laps itself, the base and
 * the rim by o, lid that reaches over by o. Common practice, no source.
 *
 * @returns null for what is no measure
 */
export function ovalPastry(
  lengthMm: number,
  widthMm: number,
  heightMm: number,
  overlapMm: number,
): PastrySheets | null {
  if (!sound([lengthMm, widthMm, heightMm]) || !(overlapMm >= 0) || !Number.isFinite(overlapMm)) return null;
  const plate = (reachMm: number): PastrySheet => {
    const [long, wide] = [lengthMm + 2 * reachMm, widthMm + 2 * reachMm];
    return { lengthMm: long, widthMm: wide, areaMm2: (Math.PI / 4) * long * wide };
  };
  const strip = [ovalRoundMm(lengthMm, widthMm) + overlapMm, heightMm + 2 * overlapMm] as const;
  const wall = { lengthMm: strip[0], widthMm: strip[1], areaMm2: strip[0] * strip[1] };
  return sheets(plate(0), wall, plate(overlapMm));
}

/** Raw pastry, g/mL. Common practice, no source: 1.15–1.25. */
export const PASTRY_DENSITY_G_PER_ML = 1.2;

/** Pastry of a mould, g: base and walls at one thickness, lid at its own. */
export interface PastryMass {
  readonly sheetsG: number;
  /** With decoration, repair and trimmings. */
  readonly withSpareG: number;
}

/**
 * Mass of pastry: area × thickness × density, spare on top. Derived.
 * @param spareFraction 0.10–0.15 for decoration and repair (common practice, no source)
 * @example pastryG(straightPastry(300, 80, 85, 20), 4, 4, 1.2, 0) // 694 g
 */
export function pastryG(
  cut: PastrySheets,
  thicknessMm: number,
  lidThicknessMm: number,
  densityGPerMl: number,
  spareFraction: number,
): PastryMass | null {
  if (!sound([thicknessMm, lidThicknessMm, densityGPerMl]) || !(spareFraction >= 0)) return null;
  if (!Number.isFinite(spareFraction)) return null;
  const volumeMm3 = (cut.areaMm2 - cut.lid.areaMm2) * thicknessMm + cut.lid.areaMm2 * lidThicknessMm;
  const sheetsG = (volumeMm3 / 1000) * densityGPerMl;
  return { sheetsG, withSpareG: sheetsG * (1 + spareFraction) };
}

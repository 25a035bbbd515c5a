/** The noise of dividing decimal weights. */
const NOISE = 1e-9;

/** A mass parted into links. */
export interface Links {
  readonly linkG: number;
  readonly linkMm: number;
  /** Whole links, and what is left over. */
  readonly count: number;
  readonly leftoverG: number;
}

/**
 * Whole links of a mass, each told by mass or by length. Twists take a little casing; that is part of the spare.
 * Derived.
 * @returns null for what is no mass or no link
 * @example linksByMass(10_000, 881, 120) // 83 links of 136 mm, 40 g over
 */
export function linksByMass(massG: number, perMetreG: number, linkG: number): Links | null {
  if (!(massG >= 0) || !Number.isFinite(massG)) return null;
  if (![perMetreG, linkG].every((value) => value > 0 && Number.isFinite(value))) return null;
  const count = Math.floor(massG / linkG + NOISE);
  return { linkG, linkMm: (linkG / perMetreG) * 1000, count, leftoverG: Math.max(0, massG - count * linkG) };
}

/** Whole links of a length. */
export function linksByLength(massG: number, perMetreG: number, linkMm: number): Links | null {
  const links = linksByMass(massG, perMetreG, (linkMm / 1000) * perMetreG);
  return links && { ...links, linkMm };
}

/** From here on acid and alcohol weaken a gelatine jelly, and by how much gelatine is raised. Common practice, no source. */
export const ACID_BELOW_PH = 4;
export const ALCOHOL_ABOVE_FRACTION = 0.1;
const RAISE = { min: 1.1, max: 1.25 } as const;
/** From here on sugar makes a jelly firmer and slower to set. From memory, no source read. */
export const SUGAR_ABOVE_FRACTION = 0.2;

export interface Weakening {
  readonly acid: boolean;
  readonly alcohol: boolean;
  /** Gelatine times this, at least and at most. 1 where nothing weakens. */
  readonly min: number;
  readonly max: number;
}

/**
 * How much more gelatine an acid or strong liquid wants: 10–25 % for each of the two. pH unknown raises nothing and is
 * told as unknown by the caller. Common practice, no source.
 * @param ph null is unknown
 * @param alcoholFraction by volume; null is unknown
 */
export function weakeningOf(ph: number | null, alcoholFraction: number | null): Weakening {
  const acid = ph !== null && ph < ACID_BELOW_PH;
  const alcohol = alcoholFraction !== null && alcoholFraction > ALCOHOL_ABOVE_FRACTION;
  const causes = Number(acid) + Number(alcohol);
  return { acid, alcohol, min: RAISE.min ** causes, max: RAISE.max ** causes };
}

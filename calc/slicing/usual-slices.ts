/** How a family is usually cut. Common practice, no source. Notes only. */
export interface SliceHabit {
  /** Slice thickness, mm; null for what is scooped or spooned. */
  readonly thicknessMm: readonly [min: number, max: number] | null;
  /** A starter and a main, g. */
  readonly starterG: readonly [min: number, max: number] | null;
  readonly mainG: readonly [min: number, max: number] | null;
}

function habit(
  thicknessMm: SliceHabit['thicknessMm'],
  starterG: SliceHabit['starterG'],
  mainG: SliceHabit['mainG'],
): SliceHabit {
  return { thicknessMm, starterG, mainG };
}

const COUNTRY = habit([10, 14], [60, 80], [100, 120]);
const FINE = habit([8, 12], [55, 75], [90, 110]);
const ROLLED = habit([6, 10], [60, 80], [100, 140]);
const SPOONED = habit([12, 12], [45, 60], [70, 90]);

const HABITS: Readonly<Record<string, SliceHabit>> = {
  'country-terrine': COUNTRY,
  'game-terrine': COUNTRY,
  'straight-terrine': FINE,
  'gratin-terrine': FINE,
  'en-croute': habit([10, 12], [70, 90], [110, 130]),
  'poultry-liver-parfait': SPOONED,
  'cooked-liver-mousse': SPOONED,
  galantine: ROLLED,
  ballotine: ROLLED,
  rillettes: habit(null, [40, 60], [80, 80]),
  brawn: habit([8, 10], [60, 80], [100, 100]),
  'cooked-ham': habit([1.2, 2], [40, 60], [80, 110]),
  'dry-bacon': habit([2, 4], null, [60, 90]),
};

/** The habit of a family, or null where the trade has none. */
export function sliceHabitOf(familyId: string | null): SliceHabit | null {
  return familyId !== null && Object.hasOwn(HABITS, familyId) ? (HABITS[familyId] ?? null) : null;
}

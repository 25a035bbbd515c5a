/**
 * What pH and water activity together say of a food by the tables of the United States Food Code, 1-201.10(B):
 * whether it needs time and temperature kept by the tables alone, or must be assessed. Table A: cooked so that growing
 * cells die, then packaged. Table B: not cooked, or cooked and not packaged. `cleared` clears nothing else.
 */
export type ByFoodCode = 'cleared' | 'assess';

type Row = readonly [mostWaterActivity: number, mostPhCleared: number];

/** Up to this water activity, a food of at most this pH is cleared. The last row has no end. */
const TABLE_A: readonly Row[] = [
  [0.92, Number.POSITIVE_INFINITY],
  [0.95, 5.6],
  [1, 4.6],
];

/** In table B the first row ends under 0.88, and over 0.92 the pH must lie under 4.2. */
function clearedByB(waterActivity: number, ph: number): boolean {
  if (waterActivity < 0.88) return true;
  if (waterActivity <= 0.9) return ph <= 5;
  return waterActivity <= 0.92 ? ph <= 4.6 : ph < 4.2;
}

/** @returns null for numbers that no food has */
export function byFoodCode(table: 'A' | 'B', waterActivity: number, ph: number): ByFoodCode | null {
  if (!(waterActivity >= 0 && waterActivity <= 1) || !(ph >= 0 && ph <= 14)) return null;
  const cleared =
    table === 'B'
      ? clearedByB(waterActivity, ph)
      : TABLE_A.some(([most, mostPh], i) => {
          const least = TABLE_A[i - 1]?.[0] ?? -1;
          return waterActivity > least && waterActivity <= most && ph <= mostPh;
        });
  return cleared ? 'cleared' : 'assess';
}

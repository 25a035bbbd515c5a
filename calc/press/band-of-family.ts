import { PRESS_BANDS, type PressBand } from './bands.ts';

/** Band of each product family that has one. Families that are not pressed, or not in one way, are left out. */
const BAND_OF_FAMILY: Readonly<Record<string, string>> = {
  'country-terrine': 'country',
  'straight-terrine': 'fine',
  'game-terrine': 'country',
  'gratin-terrine': 'fine',
  'meat-mousseline': 'none',
  'fish-mousseline': 'none',
  galantine: 'tied',
  'fine-liver-pate': 'fine',
  'poultry-liver-parfait': 'none',
  'cooked-liver-mousse': 'none',
  brawn: 'jellied',
  'ham-in-jelly': 'jellied',
  'cooked-ham': 'ham-box',
  'vegetable-terrine': 'vegetable',
};

/**
 * The press band of a product family, or null for a family that has none or is not known here.
 *
 * @example pressBandOfFamily('country-terrine')?.highKPa // 1
 */
export function pressBandOfFamily(familyId: string | null): PressBand | null {
  if (familyId === null || !Object.hasOwn(BAND_OF_FAMILY, familyId)) return null;
  return PRESS_BANDS.find((band) => band.id === BAND_OF_FAMILY[familyId]) ?? null;
}

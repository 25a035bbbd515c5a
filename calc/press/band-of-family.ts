import { PRESS_BANDS, type PressBand } from './bands.ts';

/** Band of each product family that has one. Families made without a press are left out. */
const BAND_OF_FAMILY: Readonly<Record<string, string>> = {};

/**
 * The press band of a product family, or null for a family that has none or is not known here.
 *
 * @example pressBandOfFamily('country-terrine')?.highKPa // 1
 */
export function pressBandOfFamily(familyId: string | null): PressBand | null {
  if (familyId === null || !Object.hasOwn(BAND_OF_FAMILY, familyId)) return null;
  return PRESS_BANDS.find((band) => band.id === BAND_OF_FAMILY[familyId]) ?? null;
}

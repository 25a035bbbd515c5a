import type { Family } from './family.ts';

export { type FamilyStart, familyStart, type StartLine } from './start.ts';

import { HAMS_AND_JELLIES } from './hams-and-jellies.ts';
import { LIVER_WORK } from './liver.ts';
import { SAUSAGES } from './sausages.ts';
import { TERRINES } from './terrines.ts';

export {
  type Band,
  FAMILY_MARK,
  FAMILY_SOURCE,
  type Family,
  type NamedShare,
  type NitriteHabit,
} from './family.ts';

/** The 28 product families, by number. */
export const FAMILIES: readonly Family[] = [...TERRINES, ...LIVER_WORK, ...SAUSAGES, ...HAMS_AND_JELLIES];

/** A family by id. */
export function familyOf(id: string | null): Family | undefined {
  return FAMILIES.find((family) => family.id === id);
}

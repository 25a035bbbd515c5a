import type { Family } from './family.ts';
import { SAUSAGES_AND_HAMS } from './sausages-and-hams.ts';
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
export const FAMILIES: readonly Family[] = [...TERRINES, ...SAUSAGES_AND_HAMS];

/** A family by id. */
export function familyOf(id: string | null): Family | undefined {
  return FAMILIES.find((family) => family.id === id);
}

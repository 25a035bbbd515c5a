/** How warm a mix may be when mixing or chopping ends, °C. Common practice, no source. */
export const END_MIX_LIMIT_C = {
  coarse: 12,
  fine: 10,
  mousseline: 8,
  emulsion: 12,
  /** Lower edge of 15–18. */
  'beef-emulsion': 15,
} as const;

export type MixFineness = keyof typeof END_MIX_LIMIT_C;

const FINENESS: Readonly<Record<string, MixFineness>> = {
  'country-terrine': 'coarse',
  'game-terrine': 'coarse',
  'gratin-terrine': 'coarse',
  'straight-terrine': 'fine',
  'en-croute': 'fine',
  galantine: 'fine',
  ballotine: 'fine',
  'fine-liver-pate': 'fine',
  'meat-mousseline': 'mousseline',
  'fish-mousseline': 'mousseline',
  'fresh-sausage': 'coarse',
  'cooked-coarse-sausage': 'coarse',
  'emulsified-sausage': 'emulsion',
  'white-pudding': 'emulsion',
  'liver-sausage': 'emulsion',
};

/** How fine a family is, or null where the trade has no figure. */
export function finenessOf(familyId: string | null): MixFineness | null {
  return familyId !== null && Object.hasOwn(FINENESS, familyId) ? (FINENESS[familyId] ?? null) : null;
}

/** Meat and fat before they go in, and after a pass, °C. Common practice, no source. */
export const START_MOST_C = 4;
export const FAT_START_MOST_C = 2;
export const PASS_STOP_C = 7;
/** Taken off the machine and chilled again within half an hour. */
export const RECHILL_C = 10;
/** Colder than this a mix is too hard for knife and plate. Common practice, no source. */
export const TOO_HARD_C = -4;

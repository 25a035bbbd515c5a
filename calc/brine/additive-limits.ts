import type { CureRoute, WholeMuscleProduct } from '../dry-cure/index.ts';
import type { Mark, SourceId } from '../sources/index.ts';
import type { AcceleratorForm } from './slice.ts';

/** A limit on what goes in beside nitrite, in the United States. Fractions of green weight. */
export interface AdditiveLimit {
  readonly valueFraction: number;
  readonly printed: string;
  /** A level the law asks for, not only a ceiling. */
  readonly isRequired: boolean;
  readonly source: SourceId;
  readonly mark: Mark;
}

const OUNCES_PER_HUNDREDWEIGHT = 1600;
const TABLE = { source: 'us-9-cfr-424-21-c', mark: 'confirmed', isRequired: false } as const;

/** Ascorbic or erythorbic acid, ¾ oz to 100 lb; its sodium salts, ⅞ oz to 100 lb. */
export const ACCELERATOR_LIMITS: Readonly<Record<AcceleratorForm, AdditiveLimit>> = {
  acid: { ...TABLE, valueFraction: 0.75 / OUNCES_PER_HUNDREDWEIGHT, printed: '469' },
  'sodium-salt': { ...TABLE, valueFraction: 0.875 / OUNCES_PER_HUNDREDWEIGHT, printed: '547' },
};

/** Pumped bacon: 550 mg/kg of the sodium salt, beside 120 of nitrite. Hydrates must be corrected. */
export const BACON_ACCELERATOR: AdditiveLimit = {
  valueFraction: 550e-6,
  printed: '550',
  isRequired: true,
  source: 'us-9-cfr-424-22-b',
  mark: 'confirmed',
};

/** The limit of an accelerator in such a product, or null where the form does not fit: pumped bacon takes the sodium salt. */
export function acceleratorLimit(
  form: AcceleratorForm,
  product: WholeMuscleProduct,
  route: CureRoute,
): AdditiveLimit | null {
  if (product === 'bacon' && route === 'pumped') return form === 'sodium-salt' ? BACON_ACCELERATOR : null;
  return ACCELERATOR_LIMITS[form];
}

/** Phosphate in meat; in the law's pickle 5 % at a 10 % pump comes to the same. */
export const PHOSPHATE_LIMIT: AdditiveLimit = { ...TABLE, valueFraction: 0.005, printed: '0.5' };

/** Other cure accelerators of the same table, of comminuted cured products. Shown, not judged here. */
export const OTHER_ACCELERATORS = [
  {
    id: 'fumaric-acid',
    limitFraction: 1 / OUNCES_PER_HUNDREDWEIGHT,
    asWritten: '0.065 %, or 1 oz to 100 lb; the smaller is taken',
  },
  { id: 'glucono-delta-lactone', limitFraction: 8 / OUNCES_PER_HUNDREDWEIGHT, asWritten: '8 oz to 100 lb' },
  {
    id: 'glucono-delta-lactone-genoa',
    limitFraction: 16 / OUNCES_PER_HUNDREDWEIGHT,
    asWritten: '16 oz to 100 lb of Genoa salami',
  },
  {
    id: 'sodium-acid-pyrophosphate',
    limitFraction: 8 / OUNCES_PER_HUNDREDWEIGHT,
    asWritten: '8 oz to 100 lb',
  },
] as const;

/** Most of an accelerator that citric acid or sodium citrate may stand in for. 9 CFR 424.21(c). */
export const CITRATE_SHARE_FRACTION = 0.5;

/** What pumped bacon may hold instead of 120 mg/kg of sodium nitrite. 9 CFR 424.22(b)(1). */
export const PUMPED_BACON_LEVELS = {
  required: { ppm: 120, asPotassiumNitrite: 148 },
  alternativeA: { ppm: 100, asPotassiumNitrite: 123 },
  alternativeB: { ppm: [40, 80], asPotassiumNitrite: [49, 99], sugarFraction: 0.007 },
  source: 'us-9-cfr-424-22-b' satisfies SourceId,
  mark: 'confirmed' satisfies Mark,
} as const;

/** The order a brine is mixed in. Phosphate will not dissolve in salt water; acid drives nitrite off. Common practice, no source. */
export const MIXING_ORDER = [
  'cold-water',
  'phosphate',
  'salt',
  'sugar',
  'strained-spice',
  'curing-salt',
  'accelerator',
] as const;

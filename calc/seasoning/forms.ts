import type { Mark } from '../sources/index.ts';
import type { SpiceForm } from './slice.ts';
import type { Dose } from './spice.ts';
import { SPICE_MARK, spiceOf } from './spices.ts';

/** Herbs: dried is about a third of fresh. Common practice, no source. */
const DRIED_PER_FRESH_HERB = 1 / 3;
/** Garlic powder is about a quarter of fresh garlic. Common practice, no source. */
const POWDER_PER_FRESH_GARLIC = 1 / 4;
/** Mace in place of nutmeg. Common practice, no source. */
export const MACE_PER_NUTMEG = 0.8;

const HERBS: readonly string[] = [
  'thyme',
  'rosemary',
  'sage',
  'marjoram',
  'oregano',
  'tarragon',
  'parsley',
  'chives',
  'dill',
];

/** Mass of each form that stands for one gram of the fresh, or of the ground, spice. */
function perReference(spiceId: string): Partial<Record<SpiceForm, number>> {
  if (HERBS.includes(spiceId)) return { fresh: 1, dried: DRIED_PER_FRESH_HERB };
  if (spiceId === 'garlic') return { fresh: 1, ground: POWDER_PER_FRESH_GARLIC };
  // Ground or left whole, it is the same spice. Left whole it gives less, so the ground ceiling is on the safe side.
  return { ground: 1, whole: 1 };
}

/**
 * Mass of one form that tastes like a mass of another.
 * @returns g, or null where the trade has no figure (fresh onion for powder) or the mass is none
 * @example inForm('thyme', 6, 'fresh', 'dried') // 2
 */
export function inForm(spiceId: string, massG: number, from: SpiceForm, to: SpiceForm): number | null {
  if (!(massG >= 0) || !Number.isFinite(massG)) return null;
  if (from === to) return massG;
  const { [from]: mine, [to]: wanted } = perReference(spiceId);
  return mine === undefined || wanted === undefined ? null : (massG / mine) * wanted;
}

/** A dose with how it is known: read in the table, or derived from another form. */
export interface KnownDose extends Dose {
  readonly mark: Mark;
}

/**
 * The dose of a spice in a form: the table's own, else converted from a form it has, else null.
 * @example doseOf('tarragon', 'dried')?.ceilingGPerKg // 3.33, a third of the fresh
 */
export function doseOf(spiceId: string | null, form: SpiceForm): KnownDose | null {
  const row = spiceOf(spiceId);
  if (!row) return null;
  const own = row.doses[form];
  if (own) return { ...own, mark: SPICE_MARK };
  for (const [known, { lowGPerKg, typicalGPerKg, ceilingGPerKg }] of Object.entries(row.doses)) {
    const times = inForm(row.id, 1, known as SpiceForm, form);
    if (times !== null)
      return {
        lowGPerKg: lowGPerKg * times,
        typicalGPerKg: typicalGPerKg * times,
        ceilingGPerKg: ceilingGPerKg * times,
        mark: 'derived',
      };
  }
  return null;
}

/**
 * Whole spice to grind for a mass of ground: mass ÷ (1 − loss). 2–5 % stays in the mill (common practice, no source).
 * @example wholeToGrindG(9.7, 0.03) // 10
 */
export function wholeToGrindG(groundG: number, lossFraction: number): number | null {
  if (!(groundG >= 0) || !Number.isFinite(groundG) || !(lossFraction >= 0) || !(lossFraction < 1))
    return null;
  return groundG / (1 - lossFraction);
}

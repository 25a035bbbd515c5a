import type { Allergen } from '../ingredients/index.ts';
import type { SpiceForm } from './slice.ts';

/** Doses of a seasoning, g/kg of the total mix, for food eaten cold. */
export interface Dose {
  /** Background. */
  readonly lowGPerKg: number;
  readonly typicalGPerKg: number;
  /** Where it begins to spoil the food. A ceiling of taste. */
  readonly ceilingGPerKg: number;
}

/** One row of the dose table. */
export interface Spice {
  readonly id: string;
  readonly name: string;
  /** Row of the composition table, or null without one. */
  readonly ingredientId: string | null;
  readonly doses: Readonly<Partial<Record<SpiceForm, Dose>>>;
  /** Strong enough that a large batch is tasted, not multiplied. */
  readonly strong: boolean;
  readonly euAllergens: readonly Allergen[];
  readonly usAllergens: readonly Allergen[];
  /** Salt it carries, mass fraction, where it is salty. */
  readonly saltFraction: { readonly min: number; readonly max: number } | null;
}

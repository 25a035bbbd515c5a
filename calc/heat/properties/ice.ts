import type { Composition } from './components.ts';

/** Heat of fusion of ice, J/kg. Source: `ashrae-refrigeration-2006-foods`, from memory. */
export const HEAT_OF_FUSION = 333_600;

/** Water that never freezes, as a share of the protein mass. Same source, from memory. */
const BOUND_WATER_PER_PROTEIN = 0.4;

/** Bound water as a mass fraction of the food, never more than all of its water. */
export function boundWaterFraction({ water, protein }: Composition): number {
  return Math.min(water, BOUND_WATER_PER_PROTEIN * protein);
}

/**
 * Temperature at which the first ice forms, °C (below zero), from the water, the non-fat solids and the
 * ash with its added salt. Null without water.
 * Source: `pham-1996`: t_f = −4.66 x_o/x_w − 46.4 x_a/x_w. Lean meat −1.9 °C; 1.6 % salt takes it to −3.0.
 */
export function initialFreezingC({ water, protein, carbohydrate, fibre, ash }: Composition): number | null {
  if (!(water > 0)) return null;
  return (-4.66 * (protein + carbohydrate + fibre) - 46.4 * ash) / water;
}

/**
 * Ice as a mass fraction of the food at a temperature, bound-water form. Zero at and above `freezingC`.
 * Source: `ashrae-refrigeration-2006-foods`, from memory: x_ice = (x_wo − x_b)(1 − t_f/t).
 */
export function iceFraction(composition: Composition, freezingC: number, tempC: number): number {
  if (!(tempC < freezingC)) return 0;
  return (composition.water - boundWaterFraction(composition)) * (1 - freezingC / tempC);
}

/**
 * Ice as a mass fraction of the food by the purely empirical form, which needs no bound water. It gives
 * more ice just below freezing than `iceFraction` (0.54 against 0.43 in lean pork at −5 °C); it is kept
 * to compare with tables computed that way.
 * Source: `ashrae-refrigeration-2006-foods` after Tchigeov, from memory.
 */
export function iceFractionTchigeov(waterFraction: number, freezingC: number, tempC: number): number {
  if (!(tempC < freezingC)) return 0;
  return (1.105 * waterFraction) / (1 + 0.7138 / Math.log(freezingC - tempC + 1));
}

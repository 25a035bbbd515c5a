import { type Composition, quadraticAt, SPECIFIC_HEAT, type WaterHeat, waterHeatAt } from './components.ts';
import { boundWaterFraction, HEAT_OF_FUSION, iceFraction } from './ice.ts';
import { specificHeatJkgK } from './mixture.ts';

/** Temperature at which Chen's enthalpy is zero, °C. */
const CHEN_ZERO_C = -40;

/**
 * Enthalpy of a food by Chen, J/kg, zero at −40 °C. Water-based: fat counts only as a solid.
 * Source: `ashrae-refrigeration-2006-foods` after Chen (1985), from memory.
 */
export function chenEnthalpyJkg(composition: Composition, freezingC: number, tempC: number): number {
  const solids = 1 - composition.water;
  const freezable = composition.water - boundWaterFraction(composition);
  const frozenAt = (t: number) =>
    (t - CHEN_ZERO_C) * (1550 + 1260 * solids - (freezable * HEAT_OF_FUSION * freezingC) / (CHEN_ZERO_C * t));
  if (tempC <= freezingC) return frozenAt(tempC);
  return frozenAt(freezingC) + (tempC - freezingC) * (4190 - 2300 * solids - 628 * solids ** 3);
}

/**
 * Enthalpy by Chang and Tao, J/kg, zero at 227.6 K; its own freezing point comes with it. Meat only.
 * Kept to compare with `chenEnthalpyJkg`. Valid up to the freezing point.
 * Source: `ashrae-refrigeration-2006-foods` after Chang and Tao (1981), from memory.
 */
export function changTaoEnthalpyJkg(waterFraction: number, tempC: number): number {
  const w = waterFraction - 0.73;
  const y = 0.316 - 0.247 * w - 0.688 * w * w;
  const z = 22.95 + 54.68 * (y - 0.28) - 5589.03 * (y - 0.28) ** 2;
  const freezingK = 271.18 + 1.47 * waterFraction;
  const freezingEnthalpy = 9792.46 + 405_096 * waterFraction;
  const reduced = (tempC + 273.15 - 227.6) / (freezingK - 227.6);
  return freezingEnthalpy * (y * reduced + (1 - y) * reduced ** z);
}

/**
 * Apparent specific heat, J/(kg·K), from the parts: above freezing the parts' own; below it ice, unfrozen
 * water and the latent heat of the ice that each degree makes (Schwartzberg's balance with the
 * bound-water ice fraction).
 */
export function apparentHeatJkgK(
  composition: Composition,
  freezingC: number,
  tempC: number,
  water: WaterHeat = 'original',
): number {
  const base = specificHeatJkgK(composition, tempC, water);
  if (tempC >= freezingC) return base;
  const ice = iceFraction(composition, freezingC, tempC);
  const freezable = composition.water - boundWaterFraction(composition);
  const iceHeat = quadraticAt(SPECIFIC_HEAT.ice, tempC) - waterHeatAt(tempC, water);
  return base + ice * iceHeat - (HEAT_OF_FUSION * freezable * freezingC) / (tempC * tempC);
}

/** Specific heat above freezing by Chen, J/(kg·K). Source as `chenEnthalpyJkg`. */
export function chenUnfrozenHeatJkgK(solidsFraction: number): number {
  return 4190 - 2300 * solidsFraction - 628 * solidsFraction ** 3;
}

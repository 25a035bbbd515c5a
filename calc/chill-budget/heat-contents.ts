import { type Composition, chenEnthalpyJkg, chenUnfrozenHeatJkgK, iceFraction } from '../heat/index.ts';
import { fatMeltingJkg } from './fat-melting.ts';

/** What one kilogram holds at a temperature. The zero differs from stuff to stuff; only differences count. */
export interface HeatContent {
  /** J/kg, rising with temperature, valid from −40 °C up. */
  readonly enthalpyJkg: (tempC: number) => number;
  /** J/(kg·K) thawed, for a warming that is told in degrees. */
  readonly thawedJkgK: number;
  /** Mass fraction that is ice. */
  readonly iceFraction: (tempC: number) => number;
}

/** A composition whose only parts that matter here are water, protein and fat. */
function composition(water: number, protein: number, fat: number): Composition {
  return { water, protein, fat, carbohydrate: 0, fibre: 0, ash: Math.max(0, 1 - water - protein - fat) };
}

/** Lean meat of the worked freezing cases: water 72, protein 20, fat 7 %. Common practice, no source. */
export const LEAN: Composition = composition(0.72, 0.2, 0.07);
/** Pork back fat. Source: `usda-sr28`, NDB 10004. */
export const BACK_FAT: Composition = composition(0.0769, 0.0292, 0.8869);
/** Where unsalted lean begins to freeze, °C. Source: `ashrae-refrigeration-2006-foods`, from memory. */
export const LEAN_FREEZES_C = -1.7;

/** Lean and fat blended to a fat content between them; outside it the nearer one. */
export function trimOfFat(fatFraction: number): Composition {
  const share = Math.min(1, Math.max(0, (fatFraction - LEAN.fat) / (BACK_FAT.fat - LEAN.fat)));
  const between = (lean: number, fat: number) => lean + (fat - lean) * share;
  return composition(
    between(LEAN.water, BACK_FAT.water),
    between(LEAN.protein, BACK_FAT.protein),
    between(LEAN.fat, BACK_FAT.fat),
  );
}

/**
 * Meat by the handbook's method: Chen's enthalpy, in which ice forms gradually below the freezing point. Fat counts in it
 * as a solid that does not melt; with `melting` its melting heat is added.
 * Sources: `ashrae-refrigeration-2006-foods`; `toldra-handbook-2010` and `james-meat-refrigeration-2002` for the melting.
 * @example meatHeat(LEAN).thawedJkgK // 3532
 */
export function meatHeat(
  of: Composition,
  { freezingC = LEAN_FREEZES_C, melting = false }: { freezingC?: number; melting?: boolean } = {},
): HeatContent {
  return {
    enthalpyJkg: (tempC) =>
      chenEnthalpyJkg(of, freezingC, tempC) + (melting ? of.fat * fatMeltingJkg(tempC) : 0),
    thawedJkgK: chenUnfrozenHeatJkgK(1 - of.water),
    iceFraction: (tempC) => iceFraction(of, freezingC, tempC),
  };
}

/** Something that neither melts nor freezes, J/(kg·K). For working values. */
export function constantHeat(jkgK: number): HeatContent {
  return { enthalpyJkg: (tempC) => jkgK * tempC, thawedJkgK: jkgK, iceFraction: () => 0 };
}

/** Heats of water and ice. */
export interface WaterHeats {
  readonly fusionJkg: number;
  readonly iceJkgK: number;
  readonly waterJkgK: number;
}

/** Source: `ashrae-refrigeration-2006-foods`, from memory. */
export const WATER_HEATS: WaterHeats = { fusionJkg: 333_600, iceJkgK: 2050, waterJkgK: 4190 };
/** Working values of the trade, for a check by hand. Common practice, no source. */
export const WORKING_WATER_HEATS: WaterHeats = { fusionJkg: 334_000, iceJkgK: 2100, waterJkgK: 4180 };

/**
 * Water that freezes all at once at 0 °C. At 0 °C it is taken for liquid; below, for ice. Wine and stock freeze lower:
 * taking them for water is right above 0 °C, where they are added.
 */
export function waterHeat({ fusionJkg, iceJkgK, waterJkgK }: WaterHeats = WATER_HEATS): HeatContent {
  return {
    enthalpyJkg: (tempC) => (tempC < 0 ? iceJkgK * tempC - fusionJkg : waterJkgK * tempC),
    thawedJkgK: waterJkgK,
    iceFraction: (tempC) => (tempC < 0 ? 1 : 0),
  };
}

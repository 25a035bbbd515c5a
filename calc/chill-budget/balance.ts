import { compensatedSum } from '../quantities/index.ts';
import type { HeatContent } from './heat-contents.ts';

/** A mass of something at a temperature. */
export interface HeatLot {
  readonly massG: number;
  readonly tempC: number;
  readonly heat: HeatContent;
}

/** A mass of something at the temperature of the mix. */
export type MixedLot = Pick<HeatLot, 'massG' | 'heat'>;

const G_PER_KG = 1000;
/** Coldest and hottest a mix is looked for, °C. Chen's enthalpy is zero at −40. */
const COLDEST_C = -39;
const HOTTEST_C = 95;
const HALVINGS = 60;

/** Heat of a mix at a temperature, J. */
export function heatOfMix(lots: readonly MixedLot[], tempC: number): number {
  return compensatedSum(lots.map(({ massG, heat }) => (massG / G_PER_KG) * heat.enthalpyJkg(tempC)));
}

/** Heat of lots each at its own temperature, J. */
export function heatOfLots(lots: readonly HeatLot[]): number {
  return compensatedSum(lots.map(({ massG, tempC, heat }) => (massG / G_PER_KG) * heat.enthalpyJkg(tempC)));
}

/** Heat that warms a thawed mix by one degree, J/K. */
export function thawedHeatJK(lots: readonly MixedLot[]): number {
  return compensatedSum(lots.map(({ massG, heat }) => (massG / G_PER_KG) * heat.thawedJkgK));
}

/**
 * Temperature of a mix that holds a heat: the coldest at which it holds as much. Heats are balanced, never temperatures
 * averaged: part-frozen meat swallows a great deal of heat without warming. At 0 °C ice of added water may be left.
 * Derived: conservation of energy, by halving.
 *
 * @returns °C, or null for an empty mix, a heat that is no number or one outside −39…95 °C
 */
export function mixTempC(lots: readonly MixedLot[], heatJ: number): number | null {
  if (!Number.isFinite(heatJ) || !(compensatedSum(lots.map(({ massG }) => massG)) > 0)) return null;
  if (!lots.every(({ massG }) => massG >= 0 && Number.isFinite(massG))) return null;
  if (heatOfMix(lots, COLDEST_C) > heatJ || heatOfMix(lots, HOTTEST_C) < heatJ) return null;
  let low = COLDEST_C;
  let high = HOTTEST_C;
  for (let turn = 0; turn < HALVINGS; turn++) {
    const middle = (low + high) / 2;
    if (heatOfMix(lots, middle) >= heatJ) high = middle;
    else low = middle;
  }
  // Where added ice melts, the heat jumps at 0 °C and halving ends a hair beside it.
  return Math.abs(high) < 1e-12 ? 0 : high;
}

/** Ice in a mix at a temperature, g, by the water of the meat. Added ice that is not yet melted is not in it. */
export function iceInMeatG(lots: readonly MixedLot[], tempC: number): number {
  return compensatedSum(lots.map(({ massG, heat }) => massG * heat.iceFraction(tempC)));
}

/** Work of a machine on each kilogram, J: shaft power ÷ throughput. 250 W at 60 kg/h is 15 kJ/kg. Derived. */
export function workJkg(powerW: number, throughputKgH: number): number | null {
  if (!(powerW >= 0) || !(throughputKgH > 0) || !Number.isFinite(powerW) || !Number.isFinite(throughputKgH))
    return null;
  return (powerW * 3600) / throughputKgH;
}

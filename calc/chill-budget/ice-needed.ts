import { type HeatLot, heatOfLots, heatOfMix, type MixedLot } from './balance.ts';
import { WATER_HEATS, type WaterHeats } from './heat-contents.ts';

const G_PER_KG = 1000;

/**
 * Ice that brings a mix to a temperature: what the mix has too much of, friction included, shared out on what one
 * kilogram of ice takes up on its way to melted water of that temperature.
 *
 * m = [Σ m (h(T) − h(T_end)) + W] ÷ [fusion + c_ice (0 − T_ice) + c_water T_end]. Derived: balance of heat.
 *
 * @param excessJ heat of the lots over the heat of the same mix at the end temperature, friction included
 * @returns g, 0 when the mix ends cold enough by itself; null when ice cannot melt there (below 0 °C, or ice above 0 °C)
 * @example 8 kg lean at 4, 2 kg back fat at 2, 100 kJ of work, end 2 °C, ice at −10: 432 g
 */
export function iceNeededG(
  excessJ: number,
  endC: number,
  iceC: number,
  { fusionJkg, iceJkgK, waterJkgK }: WaterHeats = WATER_HEATS,
): number | null {
  if (![excessJ, endC, iceC].every(Number.isFinite) || endC < 0 || iceC > 0) return null;
  if (excessJ <= 0) return 0;
  return (excessJ / (fusionJkg - iceJkgK * iceC + waterJkgK * endC)) * G_PER_KG;
}

/** Heat of lots and friction over that of the same mix at an end temperature, J. */
export function excessHeatJ(lots: readonly HeatLot[], workJ: number, endC: number): number {
  return heatOfLots(lots) + workJ - heatOfMix(lots satisfies readonly MixedLot[], endC);
}

import { boilingPointC, evaporationHeatJkg, saturationKPa } from './vapour.ts';

/** A pan of water in an oven, with the mould standing in it. */
export interface OvenBath {
  readonly waterG: number;
  /** Outside of the pan that the oven heats, m². */
  readonly heatedPanM2: number;
  /** Water surface left free around the mould, m². */
  readonly freeWaterM2: number;
  /** Oven to pan, W/(m²·K): convection and radiation. */
  readonly panFilmWm2K: number;
  /** Oven air to the water surface, convection alone, W/(m²·K). */
  readonly surfaceFilmWm2K: number;
  /** Water vapour in the oven air, kPa. Vented and dry 2, closed and steaming 30. */
  readonly vapourKPa: number;
  /** A lid or foil over the whole pan: heat still comes through it, nothing evaporates, the bath climbs until it boils. */
  readonly covered: boolean;
  readonly pressureKPa: number;
}

const WATER_HEAT_J_KGK = 4186;
const AIR_HEAT_J_KGK = 1006;
const WATER_EMISSIVITY = 0.9;
const STEFAN_BOLTZMANN = 5.670374e-8;
/** Lewis number of water vapour in air. */
const LEWIS = 0.85;
/** Molar mass of water over that of air. */
const MOLAR_RATIO = 0.622;
/** The bath slows over this last stretch before the boil, °C, so that it does not overshoot. */
const BOIL_EASE_C = 0.25;

/**
 * Water that leaves a free surface, kg/(m²·s).
 * Lewis analogy with Stefan flow. `shah-2002-evaporation`: the analogy fits measurements best of all
 * correlations compared, with a mean deviation of 18 %.
 */
export function evaporationKgM2S(
  bathC: number,
  bath: Pick<OvenBath, 'surfaceFilmWm2K' | 'vapourKPa' | 'pressureKPa'>,
): number {
  const saturation = Math.min(saturationKPa(bathC), 0.999 * bath.pressureKPa);
  const drive = Math.log((bath.pressureKPa - bath.vapourKPa) / (bath.pressureKPa - saturation));
  return (bath.surfaceFilmWm2K / (AIR_HEAT_J_KGK * LEWIS ** (2 / 3))) * MOLAR_RATIO * Math.max(0, drive);
}

/** What the water of a bath holds, J/K. */
export const bathHeatJK = ({ waterG }: Pick<OvenBath, 'waterG'>): number =>
  (waterG / 1000) * WATER_HEAT_J_KGK;

/** How fast a bath warms, K/s, in an oven at `ovenC` while the mould takes `loadW` from it. */
export type BathBalance = (ovenC: number, bathC: number, loadW: number) => number;

/** How a bath with this pan and this water warms. */
export function bathBalance(bath: OvenBath): BathBalance {
  const boilC = boilingPointC(bath.pressureKPa);
  const heatJK = bathHeatJK(bath);
  const fourth = (tempC: number) => (tempC + 273.15) ** 4;
  return (ovenC, bathC, loadW) => {
    const throughPan = bath.panFilmWm2K * bath.heatedPanM2 * (ovenC - bathC);
    const radiation = WATER_EMISSIVITY * STEFAN_BOLTZMANN * (fourth(ovenC) - fourth(bathC));
    const lost = bath.covered ? 0 : evaporationKgM2S(bathC, bath) * evaporationHeatJkg(bathC);
    const onSurface = bath.freeWaterM2 * (bath.surfaceFilmWm2K * (ovenC - bathC) + radiation - lost);
    const rate = (throughPan + onSurface - loadW) / heatJK;
    const room = (boilC - bathC) / BOIL_EASE_C;
    return rate > 0 && room < 1 ? rate * Math.max(0, room) : rate;
  };
}

/** Temperature an open bath settles at, °C; the boil when it would pass it. */
export function bathEquilibriumC(bath: OvenBath, ovenC: number): number {
  const balance = bathBalance(bath);
  let low = 0;
  let high = Math.min(boilingPointC(bath.pressureKPa), Math.max(ovenC, 1));
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (balance(ovenC, middle, 0) > 0) low = middle;
    else high = middle;
  }
  return high;
}

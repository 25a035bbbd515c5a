import { heatOfMix, type MixedLot } from './balance.ts';

/** Pieces the way is cut into. */
const PIECES = 200;
/** Both faces of a layer on a tray take up heat. */
const FACES = 2;
/** g/mL of a mix, and so kg per litre. Common practice, no source. */
const DENSITY_G_PER_ML = 1.04;

/** How meat lies about. */
export interface LyingMeat {
  readonly lots: readonly MixedLot[];
  readonly massG: number;
  readonly layerMm: number;
  readonly roomC: number;
  /** Film between air and meat, W/(m²·K). */
  readonly filmWm2K: number;
}

/**
 * Minutes a layer of meat takes to warm from one mean temperature to another in a room: heat of the mix over film × area
 * × difference, added up along the way. The layer is taken as one temperature, which it is not: its skin is warmer
 * sooner. Both faces take up heat, as on a metal tray.
 * Derived: heat balance of a body of one temperature.
 *
 * @returns min; 0 when it is that warm already, Infinity when the room is no warmer, null for what cannot be computed
 */
export function minutesToWarm(meat: LyingMeat, fromC: number, toC: number): number | null {
  const { lots, massG, layerMm, roomC, filmWm2K } = meat;
  if (![massG, layerMm, filmWm2K].every((value) => value > 0 && Number.isFinite(value))) return null;
  if (![roomC, fromC, toC].every(Number.isFinite)) return null;
  if (fromC >= toC) return 0;
  if (toC >= roomC) return Number.POSITIVE_INFINITY;
  const areaM2 = (FACES * (massG / DENSITY_G_PER_ML)) / layerMm / 1000;
  let seconds = 0;
  for (let piece = 0; piece < PIECES; piece++) {
    const low = fromC + ((toC - fromC) * piece) / PIECES;
    const high = fromC + ((toC - fromC) * (piece + 1)) / PIECES;
    const heatJ = heatOfMix(lots, high) - heatOfMix(lots, low);
    seconds += heatJ / (filmWm2K * areaM2 * (roomC - (low + high) / 2));
  }
  return seconds / 60;
}

import type { Face } from './mesh/index.ts';
import { type Composition, conductivityWmK, densityKgM3, specificHeatJkgK } from './properties/index.ts';
import type { Layer } from './solve/network.ts';

export type WallMaterial =
  | 'stoneware'
  | 'porcelain'
  | 'glass'
  | 'cast-iron'
  | 'stainless-steel'
  | 'tinplate'
  | 'aluminium'
  | 'silicone';

/** Conductivity, W/(m·K), and heat capacity, J/(m³·K). */
interface Wall {
  readonly conductivityWmK: number;
  readonly heatCapacityJm3K: number;
  /** Usual thickness, mm. Common practice. */
  readonly usualMm: number;
}

/**
 * Conductivities of stoneware, glass and cast iron: `martinez-solids`; density and heat of glass and iron
 * as well. The rest from memory of textbook tables.
 */
export const WALLS: Readonly<Record<WallMaterial, Wall>> = {
  stoneware: { conductivityWmK: 1.3, heatCapacityJm3K: 2200 * 850, usualMm: 8 },
  porcelain: { conductivityWmK: 1.5, heatCapacityJm3K: 2400 * 850, usualMm: 5 },
  glass: { conductivityWmK: 1.1, heatCapacityJm3K: 2230 * 840, usualMm: 6 },
  'cast-iron': { conductivityWmK: 40, heatCapacityJm3K: 7200 * 420, usualMm: 4 },
  'stainless-steel': { conductivityWmK: 15, heatCapacityJm3K: 7900 * 500, usualMm: 1 },
  tinplate: { conductivityWmK: 50, heatCapacityJm3K: 7850 * 460, usualMm: 0.5 },
  aluminium: { conductivityWmK: 200, heatCapacityJm3K: 2700 * 900, usualMm: 1.5 },
  silicone: { conductivityWmK: 0.22, heatCapacityJm3K: 1150 * 1300, usualMm: 1.5 },
};

/** Still air, W/(m·K). From memory. */
const AIR_WMK = 0.028;

/** Back fat, by mass: the composition the lining is counted with. */
const BACK_FAT: Composition = {
  water: 0.077,
  protein: 0.029,
  fat: 0.887,
  carbohydrate: 0,
  fibre: 0,
  ash: 0.007,
};
/** Baked crust between raw dough and crumb. From memory: 25 % fat, 20 % water. */
const PASTRY: Composition = {
  water: 0.2,
  protein: 0.07,
  fat: 0.25,
  carbohydrate: 0.46,
  fibre: 0.01,
  ash: 0.01,
};
/** °C at which lining and pastry are counted. */
const LAYER_AT_C = 40;

/** A layer of food of fixed properties, `thicknessMm` thick. */
export function foodLayer(composition: Composition, thicknessMm: number): Layer {
  return {
    thicknessM: thicknessMm / 1000,
    conductivityWmK: conductivityWmK(composition, LAYER_AT_C),
    heatCapacityJm3K: densityKgM3(composition, LAYER_AT_C) * specificHeatJkgK(composition, LAYER_AT_C),
  };
}

/** A lining of back fat of a thickness, mm. */
export const fatLining = (thicknessMm: number): Layer => foodLayer(BACK_FAT, thicknessMm);
/** A crust of pastry of a thickness, mm. */
export const pastry = (thicknessMm: number): Layer => foodLayer(PASTRY, thicknessMm);

/** A wall of the given or the usual thickness. */
export function wallLayer(material: WallMaterial, thicknessMm = WALLS[material].usualMm): Layer {
  const { conductivityWmK, heatCapacityJm3K } = WALLS[material];
  return { thicknessM: thicknessMm / 1000, conductivityWmK, heatCapacityJm3K };
}

/** Radiation across a gap near 50 °C, emissivity 0.9, W/(m²·K). derived */
const GAP_RADIATION_WM2K = 6.3;

/** Air between the mix and a lid, or between the mix and a wall it does not touch: still air and radiation. */
export function airGap(thicknessMm: number): Layer {
  const thicknessM = thicknessMm / 1000;
  return { thicknessM, conductivityWmK: AIR_WMK + GAP_RADIATION_WM2K * thicknessM, heatCapacityJm3K: 0 };
}

export interface MouldCoating {
  readonly wall: WallMaterial | null;
  readonly wallMm?: number;
  /** Layers of food between the mix and the wall, from the mix outward. */
  readonly inside?: readonly Layer[];
  /** Whether those layers close over the top as well. */
  readonly insideOverTop?: boolean;
  /** Air over the mix, mm, and a lid of the wall's own material. Null: no lid. */
  readonly lid?: { readonly headspaceMm: number } | null;
}

/** The layers of every face of a filled mould. The mix itself starts inside all of them. */
export function mouldLayers(coating: MouldCoating): Record<Face, readonly Layer[]> {
  const { wall, wallMm, inside = [], insideOverTop = false, lid = null } = coating;
  const shell = wall === null ? [] : [wallLayer(wall, wallMm)];
  const around = [...inside, ...shell];
  const top = [
    ...(insideOverTop ? inside : []),
    ...(lid === null ? [] : [...(lid.headspaceMm > 0 ? [airGap(lid.headspaceMm)] : []), ...shell]),
  ];
  return { bottom: around, side: around, end: around, top };
}

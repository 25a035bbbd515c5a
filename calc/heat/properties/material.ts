import { type Composition, normalised, type WaterHeat } from './components.ts';
import { apparentHeatJkgK, chenEnthalpyJkg } from './enthalpy.ts';
import { fatMeltingHeatJkg } from './fat-melting.ts';
import { iceFraction, initialFreezingC } from './ice.ts';
import { type ConductivityModel, conductivityWmK, densityKgM3 } from './mixture.ts';

/** What conduction needs to know of one material. Temperatures in °C within −40…150. */
export interface Material {
  readonly densityKgM3: number;
  /** Enthalpy, J/kg, above any fixed zero; never falls with temperature. */
  readonly enthalpyJkg: (tempC: number) => number;
  readonly conductivityWmK: (tempC: number) => number;
  /** Temperatures at which a property has a corner, °C. */
  readonly cornersC: readonly number[];
}

/** A material whose properties do not change with temperature. SI units. */
export function constantMaterial(
  conductivity: number,
  densityKgM3: number,
  specificHeatJkgK: number,
): Material {
  return {
    densityKgM3,
    enthalpyJkg: (tempC) => specificHeatJkgK * tempC,
    conductivityWmK: () => conductivity,
    cornersC: [],
  };
}

export interface FoodOptions {
  /** °C; without it, from the composition. */
  readonly freezingC?: number;
  /** Without it, from the composition at 20 °C with `airFraction`. */
  readonly densityKgM3?: number;
  /** Entrapped air, share of the volume. */
  readonly airFraction?: number;
  readonly conductivity?: ConductivityModel;
  /** `parts` sums the parts and the ice; `chen` is the water-based handbook equation. */
  readonly enthalpy?: 'parts' | 'chen';
  readonly water?: WaterHeat;
  /** Whether its fat melts as pork fat does. True unless told; `chen` leaves it out. */
  readonly fatMelting?: boolean;
}

/** °C at which a raw mix is weighed into its mould, for its density. */
const DENSITY_AT_C = 20;

/**
 * A food from its composition: properties vary with temperature, water freezes below the freezing point.
 * Fractions are scaled to sum to one. Null when they are negative, not finite or all zero.
 * Expansion is left out: the mass in the mould stays, and the density is the raw one.
 * Fat melts between 0 and 50 °C (`fatMeltingHeatJkg`), which makes a fatty mix slower to warm and to cool by several
 * per cent; the handbook's own equation knows nothing of it.
 */
export function foodMaterial(given: Composition, options: FoodOptions = {}): Material | null {
  const composition = normalised(given);
  if (composition === null) return null;
  const { airFraction = 0, conductivity = 'levy', enthalpy = 'parts', water = 'original' } = options;
  const { fatMelting = true } = options;
  const freezingC = options.freezingC ?? initialFreezingC(composition) ?? 0;
  const ice = (tempC: number) => (freezingC < 0 ? iceFraction(composition, freezingC, tempC) : 0);
  return {
    densityKgM3: options.densityKgM3 ?? densityKgM3(composition, DENSITY_AT_C, { airFraction }),
    enthalpyJkg:
      enthalpy === 'chen'
        ? (tempC) => chenEnthalpyJkg(composition, freezingC, tempC)
        : withMelting(integratedHeat(composition, freezingC, water), fatMelting ? composition.fat : 0),
    conductivityWmK: (tempC) =>
      conductivityWmK(composition, tempC, { model: conductivity, iceFraction: ice(tempC), airFraction }),
    cornersC: [freezingC],
  };
}

const withMelting =
  (heat: (tempC: number) => number, fat: number) =>
  (tempC: number): number =>
    heat(tempC) + fat * fatMeltingHeatJkg(tempC);

/** Zero of the integrated enthalpy, °C: the bottom of the property range. */
const ZERO_C = -45;

/** Two-point Gauss rule on pieces of at most 0.5 °C, never across the freezing point or 0 °C. */
function integratedHeat(composition: Composition, freezingC: number, water: WaterHeat) {
  const heat = (tempC: number) => apparentHeatJkgK(composition, freezingC, tempC, water);
  const gauss = 0.5 / Math.sqrt(3);
  const piece = (from: number, to: number) => {
    const middle = (from + to) / 2;
    const reach = (to - from) * gauss;
    return ((to - from) / 2) * (heat(middle - reach) + heat(middle + reach));
  };
  const marks: number[] = [];
  const sums: number[] = [];
  const cuts = [ZERO_C, ...[freezingC, 0].filter((cut) => cut > ZERO_C).sort((a, b) => a - b), 200];
  let total = 0;
  for (const [index, start] of cuts.slice(0, -1).entries()) {
    const end = cuts[index + 1] ?? start;
    const pieces = Math.max(1, Math.ceil((end - start) / 0.25));
    for (let i = 0; i < pieces; i++) {
      const from = start + ((end - start) * i) / pieces;
      marks.push(from);
      sums.push(total);
      total += piece(from, start + ((end - start) * (i + 1)) / pieces);
    }
  }
  return (tempC: number): number => {
    let low = 0;
    let high = marks.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((marks[middle] ?? 0) <= tempC) low = middle;
      else high = middle;
    }
    const from = marks[low] ?? ZERO_C;
    return (sums[low] ?? 0) + piece(from, tempC);
  };
}

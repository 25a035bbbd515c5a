import {
  COMPONENTS,
  CONDUCTIVITY,
  type Composition,
  DENSITY,
  quadraticAt,
  SPECIFIC_HEAT,
  type WaterHeat,
  waterHeatAt,
} from './components.ts';

/** How the conductivities of the parts are put together. `levy` is the default of the simulation. */
export type ConductivityModel = 'levy' | 'maxwell' | 'parallel' | 'series';

/** One phase of the mixture at a temperature: its share of the volume and its conductivity. */
interface Phase {
  readonly volume: number;
  readonly conductivity: number;
}

/** Volumes of the parts per kg of food, m³/kg, the water split into liquid and ice. */
function phasesOf(composition: Composition, iceFraction: number, tempC: number) {
  const phases = new Map<string, Phase>();
  for (const part of COMPONENTS) {
    const mass = part === 'water' ? composition.water - iceFraction : composition[part];
    if (mass > 0) {
      phases.set(part, {
        volume: mass / quadraticAt(DENSITY[part], tempC),
        conductivity: quadraticAt(CONDUCTIVITY[part], tempC),
      });
    }
  }
  if (iceFraction > 0) {
    phases.set('ice', {
      volume: iceFraction / quadraticAt(DENSITY.ice, tempC),
      conductivity: quadraticAt(CONDUCTIVITY.ice, tempC),
    });
  }
  return phases;
}

/**
 * Density, kg/m³, by adding volumes; entrapped air takes its share of the volume and weighs nothing.
 * Source: `ashrae-refrigeration-2006-foods`: ρ = (1 − ε) / Σ x_i/ρ_i.
 */
export function densityKgM3(
  composition: Composition,
  tempC: number,
  { iceFraction = 0, airFraction = 0 }: { iceFraction?: number; airFraction?: number } = {},
): number {
  let volume = 0;
  for (const phase of phasesOf(composition, iceFraction, tempC).values()) volume += phase.volume;
  return (1 - airFraction) / volume;
}

/** Specific heat above freezing, J/(kg·K): the parts' own, weighted by mass. */
export function specificHeatJkgK(
  composition: Composition,
  tempC: number,
  water: WaterHeat = 'original',
): number {
  const { protein, fat, carbohydrate, fibre, ash } = composition;
  return (
    composition.water * waterHeatAt(tempC, water) +
    protein * quadraticAt(SPECIFIC_HEAT.protein, tempC) +
    fat * quadraticAt(SPECIFIC_HEAT.fat, tempC) +
    carbohydrate * quadraticAt(SPECIFIC_HEAT.carbohydrate, tempC) +
    fibre * quadraticAt(SPECIFIC_HEAT.fibre, tempC) +
    ash * quadraticAt(SPECIFIC_HEAT.ash, tempC)
  );
}

/** Upper bound: every part a path of its own. */
function parallelConductivity(phases: readonly Phase[]): number {
  const total = phases.reduce((sum, { volume }) => sum + volume, 0);
  return phases.reduce((sum, { volume, conductivity }) => sum + volume * conductivity, 0) / total;
}

/** Lower bound: the parts stacked as layers across the heat. */
function seriesConductivity(phases: readonly Phase[]): number {
  const total = phases.reduce((sum, { volume }) => sum + volume, 0);
  return total / phases.reduce((sum, { volume, conductivity }) => sum + volume / conductivity, 0);
}

/** Maxwell–Eucken: `dispersed` at volume share `share` scattered in `continuous`, both W/(m·K). */
export function maxwellConductivity(continuous: number, dispersed: number, share: number): number {
  const sum = 2 * continuous + dispersed;
  const drop = share * (continuous - dispersed);
  return (continuous * (sum - 2 * drop)) / (sum + drop);
}

/** Levy's form of Maxwell–Eucken, the same whichever phase is called continuous. */
export function levyConductivity(continuous: number, dispersed: number, share: number): number {
  const ratio = dispersed / continuous;
  if (share <= 0 || ratio === 1) return continuous;
  const g = (ratio - 1) ** 2 / ((ratio + 1) ** 2 + ratio / 2);
  const s = 2 / g - 1 + 2 * share;
  const f = 0.5 * (s - Math.sqrt(s * s - (8 * share) / g));
  return (continuous * (2 + ratio + 2 * (ratio - 1) * f)) / (2 + ratio - (ratio - 1) * f);
}

/**
 * Thermal conductivity, W/(m·K). For `levy` and `maxwell` the fat is scattered in the parallel mixture of
 * everything else. Entrapped air is scattered in the result, by Maxwell–Eucken.
 * Sources: mixing rules of `ashrae-refrigeration-2006-foods` (from memory); Levy's is the best fit in the
 * comparison of `fricke-becker-2001` and within about ±10 % for lamb, offal and fat (`pham-willix-1989`).
 */
export function conductivityWmK(
  composition: Composition,
  tempC: number,
  {
    model = 'levy',
    iceFraction = 0,
    airFraction = 0,
  }: { model?: ConductivityModel; iceFraction?: number; airFraction?: number } = {},
): number {
  const phases = phasesOf(composition, iceFraction, tempC);
  const solid = solidConductivity(phases, model);
  return airFraction > 0 ? maxwellConductivity(solid, AIR_CONDUCTIVITY, airFraction) : solid;
}

/** Still air between 0 and 100 °C, W/(m·K). From memory of textbook tables (0.024–0.031). */
const AIR_CONDUCTIVITY = 0.028;

function solidConductivity(phases: ReadonlyMap<string, Phase>, model: ConductivityModel): number {
  const all = [...phases.values()];
  if (model === 'parallel') return parallelConductivity(all);
  if (model === 'series') return seriesConductivity(all);
  const fat = phases.get('fat');
  const rest = [...phases].filter(([name]) => name !== 'fat').map(([, phase]) => phase);
  if (fat === undefined) return parallelConductivity(rest);
  if (rest.length === 0) return fat.conductivity;
  const share = fat.volume / all.reduce((sum, { volume }) => sum + volume, 0);
  const mix = model === 'levy' ? levyConductivity : maxwellConductivity;
  return mix(parallelConductivity(rest), fat.conductivity, share);
}

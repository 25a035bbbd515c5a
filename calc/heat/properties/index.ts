export {
  COMPONENTS,
  CONDUCTIVITY,
  type Component,
  type Composition,
  DENSITY,
  normalised,
  quadraticAt,
  SPECIFIC_HEAT,
  type WaterHeat,
  waterHeatAt,
} from './components.ts';
export {
  apparentHeatJkgK,
  changTaoEnthalpyJkg,
  chenEnthalpyJkg,
  chenUnfrozenHeatJkgK,
} from './enthalpy.ts';
export { fatMeltingHeatJkg } from './fat-melting.ts';
export {
  boundWaterFraction,
  HEAT_OF_FUSION,
  iceFraction,
  iceFractionTchigeov,
  initialFreezingC,
} from './ice.ts';
export { constantMaterial, type FoodOptions, foodMaterial, type Material } from './material.ts';
export {
  type ConductivityModel,
  conductivityWmK,
  densityKgM3,
  levyConductivity,
  maxwellConductivity,
  specificHeatJkgK,
} from './mixture.ts';
export { type EnthalpyTable, enthalpyOf, enthalpyTable, temperatureOf } from './table.ts';

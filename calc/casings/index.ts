export {
  CASING_MARK,
  CASING_SOURCE,
  CASINGS,
  type Casing,
  type CasingMaterial,
  type CasingSpecies,
  casingOf,
  SPARE,
} from './casing-table.ts';
export type { CasingsFindingId } from './finding-ids.ts';
export { type Links, linksByLength, linksByMass } from './links.ts';
export { type CasingLength, casingForG, massPerMetreG } from './mass-per-metre.ts';
export { newCasingsSlice } from './new-casings.ts';
export type * from './slice.ts';
export { type CasingsContext, casingsStage } from './stage.ts';
export type { CasingsValues } from './values.ts';

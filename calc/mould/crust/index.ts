export { CHIMNEY_MM, type Chimneys, chimneysFor, LENGTH_PER_CHIMNEY_MM } from './chimneys.ts';
export type { Lining } from './lining-of.ts';
export { caulG, type SlicedLining, slicedLining, slicesAcross } from './lining-pieces.ts';
export { isCrustBegun, newCrustSlice } from './new-crust.ts';
export { PASTES, type Paste, type PasteWeights, pasteWeights } from './paste.ts';
export {
  ovalPastry,
  ovalRoundMm,
  PASTRY_DENSITY_G_PER_ML,
  type PastryMass,
  type PastrySheet,
  type PastrySheets,
  pastryG,
  straightPastry,
} from './pastry-sheets.ts';
export type * from './slice.ts';
export { type CrustFindingId, type CrustValues, crustStage } from './stage.ts';

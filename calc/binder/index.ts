export type { BinderContext } from './context.ts';
export type { BinderFindingId } from './finding-ids.ts';
export { GARNISH_MOST } from './findings.ts';
export { newBinderPart, newBinderSlice, newExtender, newGarnishLine, withPanade } from './new-binder.ts';
export {
  PANADE_C,
  PANADE_SHARE,
  PANADE_SOURCE,
  PANADES,
  type Panade,
  type PanadePart,
  panadeOf,
  rawPanadeG,
} from './panades.ts';
export {
  PIECE_MOST_MM,
  PIECE_MOST_SHARE,
  type PiecesPerSlice,
  piecesPerSlice,
  type Scattered,
} from './pieces.ts';
export type * from './slice.ts';
export { binderStage } from './stage.ts';
export { US_BINDER_LIMITS } from './us-limits.ts';
export type { BinderValues, Carried, ExtenderShare, GarnishValues, PanadeValues } from './values.ts';

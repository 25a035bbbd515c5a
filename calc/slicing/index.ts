export { type Cut, type CutRequest, cutByMass, cutSlices, type Packed } from './cut.ts';
export type { SlicingFindingId } from './finding-ids.ts';
export { newSlicingSlice } from './new-slicing.ts';
export type * from './slice.ts';
export { type SlicingContext, slicingStage } from './stage.ts';
export { type SliceHabit, sliceHabitOf } from './usual-slices.ts';
export type { SlicingValues } from './values.ts';

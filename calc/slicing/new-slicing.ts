import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { SlicingSlice } from './slice.ts';

/** Slices as a terrine is usually cut, each figure marked as a default. Common practice, no source. */
export function newSlicingSlice(): SlicingSlice {
  return {
    cutBy: 'thickness',
    length: blankEntry('mm'),
    thickness: defaultEntry('12', 'mm'),
    endTrim: defaultEntry('10', 'mm'),
    kerf: defaultEntry('0.5', 'mm'),
    slicesPerPortion: defaultEntry('1', 'count'),
    packMass: blankEntry('g'),
    endLoss: defaultEntry('3', '%'),
  };
}

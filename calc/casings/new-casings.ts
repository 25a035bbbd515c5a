import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { CasingsSlice } from './slice.ts';

/** Nothing chosen; density, fullness and spare are usual values, marked as defaults. Common practice, no source. */
export function newCasingsSlice(): CasingsSlice {
  return {
    casingId: null,
    batch: blankEntry('kg'),
    stuffedDiameter: blankEntry('mm'),
    density: defaultEntry('1.03', 'g/mL'),
    fullness: defaultEntry('95', '%'),
    spare: defaultEntry('10', '%'),
    linkBy: 'mass',
    linkMass: blankEntry('g'),
    linkLength: blankEntry('mm'),
    strandLength: blankEntry('m'),
    hankLength: blankEntry('m'),
    actualLinks: [],
  };
}

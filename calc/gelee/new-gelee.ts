import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { GeleeSlice } from './slice.ts';

/** A slicing jelly of powder at 200 bloom, each figure marked as a default. Common practice, no source. */
export function newGeleeSlice(): GeleeSlice {
  return {
    liquid: blankEntry('mL'),
    use: 'slice',
    gelling: 'gelatine',
    strength: blankEntry('%'),
    strengthBloom: defaultEntry('200', 'count'),
    form: 'powder',
    bloom: defaultEntry('200', 'count'),
    sheetGrade: 'gold',
    sheetMass: blankEntry('g'),
    rule: 'square-root',
    naturalSet: defaultEntry('0', '%'),
    ph: blankEntry('ratio'),
    alcohol: defaultEntry('0', '%'),
    sugar: defaultEntry('0', '%'),
    rawFruit: [],
    origin: 'unknown',
    cavity: blankEntry('mL'),
    pour: blankEntry('C'),
    core: blankEntry('C'),
  };
}

import { blankEntry, defaultEntry } from '../../quantities/index.ts';
import type { CrustSlice } from './slice.ts';

/** A crust as it is usually rolled, each figure marked as a default. Common practice, no source. */
export function newCrustSlice(): CrustSlice {
  return {
    mouldId: null,
    thickness: defaultEntry('4', 'mm'),
    lidThickness: defaultEntry('4', 'mm'),
    overlap: defaultEntry('20', 'mm'),
    density: defaultEntry('1.2', 'g/mL'),
    spare: defaultEntry('12', '%'),
    pasteId: 'short',
    salt: blankEntry('%'),
  };
}

import { blankEntry, defaultEntry } from '../../quantities/index.ts';
import type { CrustSlice } from './slice.ts';

/** Whether a person chose a mould or a paste, or typed anything: until then there is no crust, only its blank form. */
export function isCrustBegun(slice: CrustSlice): boolean {
  const { mouldId, pasteId, ...entries } = slice;
  const isTyped = Object.values(entries).some(({ origin }) => origin === 'entered');
  return mouldId !== null || pasteId !== newCrustSlice().pasteId || isTyped;
}

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
    pieceWidth: blankEntry('mm'),
    pieceOverlap: defaultEntry('6', 'mm'),
    pieceMass: blankEntry('g'),
    pieceSalt: blankEntry('%'),
  };
}

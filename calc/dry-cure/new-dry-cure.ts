import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { CuringSaltPack, DryCurePiece, DryCureSlice } from './slice.ts';

/** A pack nobody has read yet. */
export function newCuringSaltPack(): CuringSaltPack {
  return { name: '', lot: '', strength: { nitrite: blankEntry('%'), nitrate: blankEntry('%') } };
}

/** A piece that has not been weighed. */
export function newDryCurePiece(id: string): DryCurePiece {
  return {
    id,
    name: '',
    skinOff: blankEntry('g'),
    skinOn: blankEntry('g'),
    thickness: blankEntry('mm'),
    saltActual: blankEntry('g'),
    curingSaltActual: blankEntry('g'),
    sugarActual: blankEntry('g'),
    now: blankEntry('g'),
  };
}

/** An empty dry cure. Salt 2.5 % and 3 °C are defaults of common practice; nitrite has none. */
export function newDryCureSlice(): DryCureSlice {
  return {
    product: null,
    finish: null,
    isTraditional: false,
    method: 'equilibrium',
    pieces: [],
    saltTarget: defaultEntry('2.5', '%'),
    sugar: blankEntry('%'),
    nitriteTarget: blankEntry('ppm'),
    pack: newCuringSaltPack(),
    chillTemp: defaultEntry('3', 'C'),
    startedOn: '',
    lossTarget: blankEntry('%'),
  };
}

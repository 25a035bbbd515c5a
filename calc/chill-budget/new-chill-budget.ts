import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { ChillBudgetSlice, ChillLot, GrindPass, LotKind, PassKind } from './slice.ts';

/** Warming of a pass, °C: grinding 2–4, chopping 10 or so. Common practice, no source. */
const USUAL_RISE: Readonly<Record<PassKind, string>> = { grind: '3', chop: '10', mix: '2' };

/** Lean, fat and two passes; everything but masses marked as defaults. Common practice, no source. */
export function newChillBudgetSlice(): ChillBudgetSlice {
  return {
    lots: [newChillLot('lean', 'lean'), newChillLot('fat', 'fat')],
    passes: [newGrindPass('pass-1', 'grind'), newGrindPass('pass-2', 'grind'), newGrindPass('mix', 'mix')],
    fatHeat: 'without-melting',
    limit: blankEntry('C'),
    iceTemp: defaultEntry('-10', 'C'),
    liquidAllowance: blankEntry('g'),
    room: defaultEntry('20', 'C'),
    layer: defaultEntry('50', 'mm'),
    cube: defaultEntry('25', 'mm'),
    freezer: defaultEntry('-18', 'C'),
  };
}

/** A lot with nothing measured. */
export function newChillLot(id: string, kind: LotKind): ChillLot {
  return {
    id,
    name: '',
    kind,
    mass: blankEntry('kg'),
    temp: blankEntry('C'),
    fat: blankEntry('%'),
    beforePassId: null,
  };
}

/** A pass with its usual warming, marked as a default. */
export function newGrindPass(id: string, kind: PassKind): GrindPass {
  return { id, kind, rise: defaultEntry(USUAL_RISE[kind], 'dC') };
}

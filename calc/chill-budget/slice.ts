import type { Entry } from '../quantities/index.ts';

/** What a lot is made of, as far as heat goes. */
export type LotKind = 'lean' | 'mixed' | 'fat' | 'liquid' | 'ice';

/** Something that goes into the mix at a temperature. */
export interface ChillLot {
  id: string;
  name: string;
  kind: LotKind;
  mass: Entry;
  temp: Entry;
  /** Fat of a mixed lot, %; blank for the other kinds. */
  fat: Entry;
  /** The pass before which it is added, or null: it is there from the start. */
  beforePassId: string | null;
}

export type PassKind = 'grind' | 'chop' | 'mix';

/** One run through a machine. */
export interface GrindPass {
  id: string;
  kind: PassKind;
  /** How far it warms a mix that is not frozen. */
  rise: Entry;
}

/** Whether the melting of fat is counted. Without it the mix comes out warmer, which is the careful way. */
export type FatHeat = 'without-melting' | 'with-melting';

export interface ChillBudgetSlice {
  lots: ChillLot[];
  passes: GrindPass[];
  fatHeat: FatHeat;
  /** Warmest the mix may be at the end. Blank: by family. */
  limit: Entry;
  /** Of the ice that could still be added. */
  iceTemp: Entry;
  /** Water the formula allows as ice. */
  liquidAllowance: Entry;
  room: Entry;
  /** How thick the meat lies. */
  layer: Entry;
  /** Edge of the cubes that go into the freezer. */
  cube: Entry;
  freezer: Entry;
}

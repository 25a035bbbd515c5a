import type { WallMaterial } from '../heat/index.ts';
import type { Entry } from '../quantities/index.ts';

/** What surrounds the mould while it cooks. */
export type CookMethod = 'bath' | 'oven' | 'steam' | 'poach';

/** What the mould is made of; `none` for a roll in cloth or film. */
export type PlanVessel = WallMaterial | 'none';

/** What lies over the filled mould: nothing, foil, or a lid of the mould's own material. */
export type PlanLid = 'open' | 'foil' | 'lid';

export type ChillKind = 'ice-bath' | 'stirred-ice-bath' | 'blast' | 'refrigerate';

/** One stage of the chill. It ends after `minutes` or, where that is blank, when the core reads `until`. */
export interface ChillLeg {
  id: string;
  kind: ChillKind;
  /** Of the air or of the ice water. */
  temp: Entry;
  minutes: Entry;
  until: Entry;
  /** Stacked moulds touch: nothing leaves through top and base. */
  standing: 'apart' | 'stacked';
  /** Covered: still air under a film or lid over the top. */
  top: 'open' | 'covered';
}

/** What is known of one kitchen's heat against the shipped figures, learnt from a finished cook or typed. */
export interface OvenRecord {
  /** Blank: the shipped figures. */
  name: string;
  /** Air and water give their heat so many times as well. */
  films: Entry;
  /** The oven heats the pan of a bath so many times as strongly. */
  heating: Entry;
  /** Oven, steam or kettle is so much hotter than it shows, °C difference. */
  shift: Entry;
}

/** A predicted figure with its band, as it is kept. Null: never, in that draw. */
export interface ToldFigure {
  low: number | null;
  middle: number | null;
  high: number | null;
}

/**
 * What a plan predicted when somebody kept it for the sheet, as it stood: derived, like the assessment of an issued
 * sheet, and never read by any verdict.
 */
export interface ToldPlan {
  /** ISO date-time. */
  at: string;
  calcVersion: string;
  /** Checksum of the problem it was told for. */
  ofPlan: string;
  /** °C. */
  targetC: number;
  /** Minutes after it goes in. */
  target: ToldFigure;
  heatEnd: ToldFigure;
  /** °C. */
  peak: ToldFigure;
}

/** How a batch is to be cooked and chilled, for one kind of mould. */
export interface CookPlanSlice {
  /** Mould of the mould slice; null: the only one there is. */
  mouldId: string | null;
  vessel: PlanVessel;
  /** Blank: the usual wall of that material. */
  wall: Entry;
  lid: PlanLid;
  /** Of the mix, %; counted with where the formula does not say. */
  water: Entry;
  protein: Entry;
  fat: Entry;
  /** Core when it goes in. */
  start: Entry;
  method: CookMethod;
  /** Setting of the oven, with or without a bath in it. */
  oven: Entry;
  /** Air of that oven. */
  fan: 'still' | 'fan';
  steam: Entry;
  kettle: Entry;
  /** Bath in an oven: water, its start, and the pan it stands in. */
  bathWater: Entry;
  bathStart: Entry;
  cover: 'covered' | 'open';
  panLength: Entry;
  panWidth: Entry;
  panHeight: Entry;
  /** How many moulds share the pan. */
  mouldsInPan: Entry;
  /** How high the water stands at the mould. Blank: by water and pan; in a kettle, over it. */
  level: Entry;
  altitude: Entry;
  ovenRecord: OvenRecord;
  /** Core at which the hold begins. Blank: by the limit that was chosen. */
  target: Entry;
  /** Further time in the heat from then on. Blank: by that limit. */
  hold: Entry;
  rest: Entry;
  room: Entry;
  /** Minutes under a board in the refrigerator, before the chill. Blank: none. */
  press: Entry;
  pressAir: Entry;
  chill: ChillLeg[];
  /** What it predicted when somebody kept it for the sheet. */
  told?: ToldPlan;
}

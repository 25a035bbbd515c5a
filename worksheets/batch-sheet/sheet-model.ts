import type { VerdictState } from '@larderwright/calc/findings';

/**
 * The printed sheet as plain words and numbers, ready to set. `sheet-build.ts` makes it from a batch and
 * its assessment; the blocks only lay it out. What is null prints as a box to write in.
 */
export interface SheetModel {
  demo: boolean;
  header: SheetHeader;
  warnings: SheetWarnings;
  preStart: PreStart;
  materials: Materials;
  cure: CureBlock | null;
  salt: SaltBlock;
  temperatures: readonly TemperatureLimit[];
  fill: FillBlock;
  cook: CookBlock;
  cool: CoolBlock;
  /** Null with too few readings, or where the page has no room. */
  curve: SheetCurve | null;
  deviations: readonly DeviationLine[];
  yields: YieldBlock;
  label: LabelBlock;
  signOffs: Readonly<Record<'made' | 'checked' | 'verified', string | null>>;
  /** Every stop, in words: printed on both copies under the header. */
  stops: readonly string[];
  foot: SheetFoot;
}

/** A printed input or answer. `flag`: E entered, D shipped default, W worked out here. */
export interface Filled {
  text: string;
  flag: 'E' | 'D' | 'W';
}

export interface SheetHeader {
  product: string | null;
  family: string | null;
  batchNo: string | null;
  kitchen: string | null;
  madeBy: string | null;
  moulds: string | null;
  portions: Filled | null;
}

export interface SheetWarnings {
  /** Null while the formula is empty: an empty list would read as "none". */
  allergens: string | null;
  audience: string | null;
}

export interface PreStart {
  probes: string | null;
  probeError: Filled | null;
  scaleStep: Filled | null;
}

export interface MaterialRow {
  id: string;
  name: string;
  planned: Filled | null;
  /** Coldest-chain limit while it waits, °C, or null where none applies. */
  limit: string | null;
  lot: string | null;
  actual: Filled | null;
  /** Kept on the bench copy even when the rest moves to a card: salt. */
  staysOnBench: boolean;
}

/** Seasonings in one row, with what each weighs. */
export interface GatheredRow {
  name: string;
  planned: Filled | null;
  gathered: string;
}

export interface Materials {
  /** Meat, fat, liver, offal: each with its temperature in. */
  meats: readonly MaterialRow[];
  /** Everything else that is weighed, but curing salt, which has a block of its own. */
  others: readonly MaterialRow[];
  /** The seasonings, when they stand in `others` no more. */
  gathered: GatheredRow | null;
  /** The seasonings one by one, for the fitting to gather or to spread. */
  seasonings: readonly MaterialRow[];
  seasoningTotal: string | null;
  total: Filled | null;
  meatBlock: Filled | null;
  /** Lines that stand on a card of their own because the page holds no more. */
  onCard: readonly MaterialRow[];
}

export interface CureLine {
  name: string;
  strength: Filled | null;
  grams: Filled | null;
  actual: Filled | null;
  lot: string | null;
}

export interface CureBlock {
  lines: readonly CureLine[];
  /** On both bases, as sodium nitrite and as ion. */
  ppm: string;
  weighedBy: string | null;
  checkedBy: string | null;
  verdicts: readonly SheetVerdict[];
}

export interface SaltBlock {
  target: Filled | null;
  total: string | null;
  onWater: string | null;
  sources: string | null;
  /** Salt of mix and lining together; null where nothing lines the moulds. */
  lined: string | null;
  /** What brine or dry cure says of the salt, in place of all else: the formula is then the bare meat. */
  elsewhere?: string;
}

export interface TemperatureLimit {
  label: string;
  limit: string;
}

export interface FillBlock {
  moulds: readonly {
    id: string;
    name: string;
    fill: Filled | null;
    headspace: Filled | null;
    /** What it is lined with, and the sheet to cut; null: nothing. */
    lining: string | null;
  }[];
  density: Filled | null;
  actual: readonly (string | null)[];
}

export interface SheetVerdict {
  state: VerdictState;
  title: string;
  basis: string;
  fromMemory: boolean;
}

export interface SheetReading {
  clock: string;
  temperature: string;
  remark: string | null;
}

export interface LogBlock {
  name: string;
  probe: string;
  offset: Filled | null;
  error: Filled | null;
  count: number;
  /** The readings that decide, or all when there are few. */
  readings: readonly SheetReading[];
}

export interface CookBlock {
  medium: Filled | null;
  oven: Filled | null;
  limit: string | null;
  action: string | null;
  started: string | null;
  ended: string | null;
  limitReached: string | null;
  heldUntil: string | null;
  peak: string | null;
  logs: readonly LogBlock[];
  verdicts: readonly SheetVerdict[];
  /** Readings typed in late, and readings left out by a person. */
  remarks: readonly string[];
  /** Information beside the verdict; drops first where the page is full. */
  beside: readonly string[];
}

export interface CoolLeg {
  title: string;
  latest: string | null;
  elapsed: string | null;
  verdict: SheetVerdict | null;
}

export interface CoolBlock {
  press: Filled | null;
  pressure: string | null;
  started: string | null;
  legs: readonly CoolLeg[];
  logs: readonly LogBlock[];
  verdicts: readonly SheetVerdict[];
  /** Growth, for information; drops first where the page is full. */
  beside: readonly string[];
}

/** The core through heat and cold as one small picture, mm. */
export interface SheetCurve {
  line: string;
  /** Readings that cannot be and readings left out, crossed. */
  odd: readonly { x: number; y: number }[];
  limit: { y: number; label: string } | null;
  /** Temperatures of the cooling rule, where the drawing is tall enough. */
  cooling: readonly { y: number; label: string }[];
  starts: string;
  ends: string;
  top: string;
}

export interface DeviationLine {
  id: string;
  text: string;
}

export interface YieldBlock {
  raw: string | null;
  finished: Filled | null;
  loss: string | null;
}

export interface LabelBlock {
  useBy: string | null;
  trace: string | null;
}

export interface SheetFoot {
  /** By the copy whose verdicts they rule. */
  ruleSets: Readonly<Record<'bench' | 'record', readonly string[]>>;
  calcVersion: string | null;
  recordVersion: number | null;
  printedAt: string | null;
  batchId: string | null;
  /** Checksum of the record as it goes to paper. */
  check: string | null;
}

import type { BinderSlice } from '../binder/index.ts';
import type { BlendSlice } from '../blend/index.ts';
import type { BrineSlice } from '../brine/index.ts';
import type { CasingsSlice } from '../casings/index.ts';
import type { ChillBudgetSlice } from '../chill-budget/index.ts';
import type { CookPlanSlice } from '../cook-plan/index.ts';
import type { CureSlice } from '../cure/index.ts';
import type { DryCureSlice } from '../dry-cure/index.ts';
import type { DryingSlice } from '../drying/index.ts';
import type { FormulaSlice } from '../formula/index.ts';
import type { GeleeSlice } from '../gelee/index.ts';
import type { StorageSlice } from '../growth/index.ts';
import type { LabelSlice } from '../label/index.ts';
import type { CrustSlice, MouldSlice } from '../mould/index.ts';
import type { PlanSlice } from '../plan/index.ts';
import type { PressSlice } from '../press/index.ts';
import type { ProcessSlice } from '../process/index.ts';
import type { Entry } from '../quantities/index.ts';
import type { SeasoningSlice } from '../seasoning/index.ts';
import type { SlicingSlice } from '../slicing/index.ts';
import type { ThermometerSlice } from '../thermometer/index.ts';
import type { YieldSlice } from '../yield/index.ts';

/** The version this code writes. Older records are migrated, newer ones refused. */
export const BATCH_SCHEMA = 2;

export interface ProductSlice {
  name: string;
  batchNo: string;
  kitchen: string;
  /** Planned portions. */
  portions: Entry;
  madeBy: string;
  /** Finished mass after chilling, g. */
  finished: Entry;
  useBy: string;
}

/** What went wrong and what was decided. */
export interface Deviation {
  id: string;
  at: string;
  what: string;
  decision: '' | 'release' | 'reheat' | 'discard' | 'hold';
  cause: string;
  prevention: string;
  by: string;
}

export interface SignOff {
  role: 'made' | 'checked' | 'verified';
  name: string;
  at: string;
}

export type BatchState = 'planned' | 'in-process' | 'held' | 'released' | 'discarded';

/** A step in the life of the batch, said by a person. Steps are added and never changed. */
export interface StateChange {
  id: string;
  state: BatchState;
  /** ISO 8601 with offset. */
  at: string;
  by: string;
  /** The other person a release needs; '' for every other state. */
  second: string;
  /** Why it is held or discarded, in a person's words. */
  why: string;
}

/** Where some of the batch went, for the day it has to come back. */
export interface Dispatch {
  id: string;
  /** ISO 8601 with offset. */
  at: string;
  to: string;
  /** As written: "12 portions", "1.4 kg". */
  amount: string;
  by: string;
}

/** One change of a reading, a weight or a signature. Entries are added and never changed. */
export interface HistoryEntry {
  /** When it was typed: ISO 8601 with offset. */
  at: string;
  /** Who stood at the bench; '' where nobody said. */
  by: string;
  /** Path of the field. */
  what: string;
  /** What a person calls the row it stands in, as it was then: "Pork liver". '' where it has no name. */
  row: string;
  from: string;
  to: string;
  /** Running checksum over this and all earlier entries. */
  sum: string;
}

/** The assessment as it stood when the sheet was printed or the batch released. */
export interface IssuedAssessment {
  issuedAt: string;
  calcVersion: string;
  ruleSets: readonly { subject: string; id: string; edition: string; reviewed: string }[];
  /** Composition rows used, by ingredient id: per 100 g. */
  composition: Readonly<
    Record<
      string,
      { waterG: number | null; proteinG: number | null; fatG: number | null; saltG: number | null }
    >
  >;
  verdicts: readonly { id: string; state: string; reason: string }[];
  figures: Readonly<Record<string, number | null>>;
}

/**
 * Which rule sets the kitchen's settings put into this batch and nobody has confirmed for it yet. A set that a person
 * chose is false here.
 */
export interface RuleSetDefaults {
  cure: boolean;
  cook: boolean;
  cool: boolean;
}

/**
 * Slices a batch need not have: each is begun by its own worksheet. Without it the subject has simply not been
 * worked on.
 */
export interface OptionalSlices {
  plan?: PlanSlice;
  yield?: YieldSlice;
  blend?: BlendSlice;
  slicing?: SlicingSlice;
  dryCure?: DryCureSlice;
  brine?: BrineSlice;
  drying?: DryingSlice;
  seasoning?: SeasoningSlice;
  chillBudget?: ChillBudgetSlice;
  binder?: BinderSlice;
  gelee?: GeleeSlice;
  casings?: CasingsSlice;
  crust?: CrustSlice;
  label?: LabelSlice;
  storage?: StorageSlice;
  cookPlan?: CookPlanSlice;
  thermometers?: ThermometerSlice;
  ruleSetDefaults?: RuleSetDefaults;
}

/** One batch as one plain record: what a person entered or measured, nothing derived but `issued`. */
export interface Batch extends OptionalSlices {
  schema: typeof BATCH_SCHEMA;
  id: string;
  /** An invented example: marked on every screen and sheet. */
  demo: boolean;
  createdAt: string;
  updatedAt: string;
  /** IANA time zone the clock times were written in. */
  zone: string;
  product: ProductSlice;
  formula: FormulaSlice;
  cure: CureSlice;
  mould: MouldSlice;
  process: ProcessSlice;
  press: PressSlice;
  deviations: Deviation[];
  signOffs: SignOff[];
  notes: string;
  issued: IssuedAssessment[];
  /** In order of time; empty while nobody has said anything. */
  lifecycle: StateChange[];
  dispatches: Dispatch[];
  history: HistoryEntry[];
}

import type { CureSlice } from '../cure/index.ts';
import type { FormulaSlice } from '../formula/index.ts';
import type { MouldSlice } from '../mould/index.ts';
import type { PressSlice } from '../press/index.ts';
import type { ProcessSlice } from '../process/index.ts';
import type { Entry } from '../quantities/index.ts';

/** The version this code writes. Older records are migrated, newer ones refused. */
export const BATCH_SCHEMA = 1;

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

/** One batch as one plain record: what a person entered or measured, nothing derived but `issued`. */
export interface Batch {
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
}

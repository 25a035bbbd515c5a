/** What stands at head and foot of a printed card: which batch, which rules, which code, when. */
export interface CardHead {
  readonly demo: boolean;
  readonly product: string | null;
  readonly batchNo: string | null;
  readonly kitchen: string | null;
  readonly ruleSets: readonly string[];
  /** "calc 0.1.0 · record 1"; null on a card nobody has filled. */
  readonly version: string | null;
  readonly batchId: string | null;
  readonly printedAt: string | null;
  /** "HELD 2026-11-27 14:10 by JK: chiller failed"; null while the batch may be used. */
  readonly outOfUse: string | null;
}

/** Head and foot of a card without a batch. */
export const BLANK_HEAD: CardHead = {
  demo: false,
  product: null,
  batchNo: null,
  kitchen: null,
  ruleSets: [],
  version: null,
  batchId: null,
  printedAt: null,
  outOfUse: null,
};

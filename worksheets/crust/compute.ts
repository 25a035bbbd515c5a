import type { Batch } from '@larderwright/calc/batch';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import {
  type CrustSlice,
  type CrustValues,
  crustStage,
  type MouldItem,
  newCrustSlice,
} from '@larderwright/calc/mould';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { crustWords } from '../words/crust.ts';
import { learnWords } from '../words/index.ts';
import { crustBlocks } from './crust-blocks.ts';

/** What calc makes of a crust, and its card. */
export interface CrustComputed {
  readonly slice: CrustSlice;
  readonly mould: MouldItem | null;
  readonly values: CrustValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  readonly head: CardHead;
  readonly blocks: readonly CardBlock[];
  readonly stops: readonly string[];
}

learnWords(crustWords);

/** Whether there is a lining needs no composition: the table is not fetched for this page. */
const NO_TABLE = new Map();

/** Everything the crust page shows of a batch. */
export function computeCrust(batch: Batch): CrustComputed {
  const slice = batch.crust ?? newCrustSlice();
  const { values, findings, missing } = crustStage(slice, batch.mould, {
    hasLiningLine: formulaStage(batch.formula, { composition: NO_TABLE }).values.lined !== null,
  });
  const mould = batch.mould.moulds.find(({ id }) => id === values.mouldId) ?? null;
  return {
    slice,
    mould,
    values,
    findings,
    missing,
    head: cardHead(batch, [], nowIso()),
    blocks: crustBlocks(batch, slice, mould, values),
    stops: stopLines([], findings),
  };
}

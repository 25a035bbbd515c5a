import type { Batch } from '@larderwright/calc/batch';
import {
  type CasingsSlice,
  type CasingsValues,
  casingsStage,
  newCasingsSlice,
} from '@larderwright/calc/casings';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { casingsWords } from '../words/casings.ts';
import { learnWords } from '../words/index.ts';
import { linkBlocks } from './link-blocks.ts';

/** What calc makes of casings and links, and their card. */
export interface CasingsComputed {
  readonly slice: CasingsSlice;
  readonly values: CasingsValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  readonly head: CardHead;
  readonly blocks: readonly CardBlock[];
  readonly stops: readonly string[];
}

learnWords(casingsWords);

/** Weights need no composition: the table is not fetched for this page. */
const NO_TABLE = new Map();

/** Everything the casings page shows of a batch. */
export function computeCasings(batch: Batch): CasingsComputed {
  const slice = batch.casings ?? newCasingsSlice();
  const { totalG } = formulaStage(batch.formula, { composition: NO_TABLE }).values.mix;
  const { values, findings, missing } = casingsStage(slice, { totalG });
  return {
    slice,
    values,
    findings,
    missing,
    head: cardHead(batch, [], nowIso()),
    blocks: linkBlocks(batch, slice, values),
    stops: stopLines([], findings),
  };
}

import type { Batch } from '@larderwright/calc/batch';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import { type GeleeSlice, type GeleeValues, geleeStage, newGeleeSlice } from '@larderwright/calc/gelee';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { geleeWords } from '../words/gelee.ts';
import { learnWords } from '../words/index.ts';
import { jellyBlocks } from './jelly-blocks.ts';

/** What calc makes of a jelly, and its card. */
export interface GeleeComputed {
  readonly slice: GeleeSlice;
  readonly values: GeleeValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  readonly head: CardHead;
  readonly blocks: readonly CardBlock[];
  readonly stops: readonly string[];
}

learnWords(geleeWords);

/** Everything the jelly page shows of a batch. */
export function computeGelee(batch: Batch): GeleeComputed {
  const slice = batch.gelee ?? newGeleeSlice();
  const { values, findings, missing } = geleeStage(slice);
  return {
    slice,
    values,
    findings,
    missing,
    head: cardHead(batch, [], nowIso()),
    blocks: jellyBlocks(batch, slice, values, findings),
    stops: stopLines([], findings),
  };
}

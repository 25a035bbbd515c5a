import type { Batch } from '@larderwright/calc/batch';
import { type DryingSlice, type DryingValues, dryingStage, newDryingSlice } from '@larderwright/calc/drying';
import type { Finding, Verdict } from '@larderwright/calc/findings';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { dryingWords } from '../words/drying.ts';
import { learnWords } from '../words/index.ts';
import { type LotValues, lotValues } from './lot-values.ts';

/** What calc makes of a lot that ferments or dries, and the card that goes with it. */
export interface DryingComputed {
  readonly slice: DryingSlice;
  readonly values: DryingValues;
  readonly findings: readonly Finding[];
  readonly verdicts: readonly Verdict[];
  readonly head: CardHead;
  readonly lot: LotValues;
  readonly stops: readonly string[];
}

learnWords(dryingWords);

/** Everything the drying page shows of a batch. */
export function computeDrying(batch: Batch): DryingComputed {
  const slice: DryingSlice = batch.drying ?? newDryingSlice();
  const { values, findings, verdicts } = dryingStage(slice);
  return {
    slice,
    values,
    findings,
    verdicts,
    head: cardHead(batch, [], nowIso()),
    lot: lotValues(slice, values, verdicts),
    stops: stopLines(verdicts, findings),
  };
}

import type { Batch } from '@larderwright/calc/batch';
import { type BrineSlice, type BrineValues, brineStage, newBrineSlice } from '@larderwright/calc/brine';
import type { Finding, Verdict } from '@larderwright/calc/findings';
import { entryValue } from '@larderwright/calc/quantities';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { brineWords } from '../words/brine.ts';
import { learnWords } from '../words/index.ts';
import { type VatValues, vatValues } from './vat-values.ts';

/** What calc makes of the vat, and the card that goes with it. */
export interface BrineComputed {
  readonly slice: BrineSlice;
  readonly values: BrineValues;
  readonly findings: readonly Finding[];
  readonly verdicts: readonly Verdict[];
  readonly targetPpm: number | null;
  readonly readabilityG: number | null;
  readonly head: CardHead;
  readonly vat: VatValues;
  readonly stops: readonly string[];
}

learnWords(brineWords);

/** Everything the brine page shows of a batch. */
export function computeBrine(batch: Batch): BrineComputed {
  const slice: BrineSlice = batch.brine ?? newBrineSlice();
  const finishedMassG = entryValue('mass', batch.product.finished);
  const { values, findings, verdicts } = brineStage({ cure: batch.cure, brine: slice }, { finishedMassG });
  return {
    slice,
    values,
    findings,
    verdicts,
    targetPpm: entryValue('ppm', slice.nitriteTarget),
    readabilityG: entryValue('mass', batch.cure.scaleReadability),
    head: cardHead(batch, [values.ruleSet], nowIso()),
    vat: vatValues(batch, slice, values, verdicts),
    stops: stopLines(verdicts, findings),
  };
}

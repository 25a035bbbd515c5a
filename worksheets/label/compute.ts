import { type Batch, labelOf } from '@larderwright/calc/batch';
import type { Finding, MissingInput, Verdict } from '@larderwright/calc/findings';
import { loadIngredientDetails, loadIngredients } from '@larderwright/calc/ingredients';
import { type LabelSlice, type LabelValues, newLabelSlice } from '@larderwright/calc/label';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { learnWords } from '../words/index.ts';
import { labelWords } from '../words/label.ts';
import { labelBlocks } from './label-blocks.ts';
import { type Sold, soldAs } from './sold-as.ts';

/** What calc makes of the label on the bench, and its card. */
export interface LabelComputed {
  readonly slice: LabelSlice;
  readonly values: LabelValues;
  readonly findings: readonly Finding[];
  readonly verdicts: readonly Verdict[];
  readonly missing: readonly MissingInput[];
  readonly sold: Sold | null;
  readonly head: CardHead;
  readonly stops: readonly string[];
  readonly blocks: readonly CardBlock[];
}

learnWords(labelWords);

/** Fetches composition and details, and gives the function from batch to label. */
export async function loadLabel(): Promise<(batch: Batch) => LabelComputed> {
  const [table, details] = await Promise.all([loadIngredients(), loadIngredientDetails()]);
  return (batch) => {
    const slice = batch.label ?? newLabelSlice();
    const { values, findings, verdicts, missing } = labelOf(batch, table, details);
    const sold = soldAs(batch);
    return {
      slice,
      values,
      findings,
      verdicts,
      missing,
      sold,
      head: cardHead(batch, [], nowIso()),
      stops: stopLines(verdicts, findings),
      blocks: labelBlocks(batch, slice, values, verdicts, sold),
    };
  };
}

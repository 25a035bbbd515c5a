import { type Batch, binderContext } from '@larderwright/calc/batch';
import { type BinderSlice, type BinderValues, binderStage, newBinderSlice } from '@larderwright/calc/binder';
import type { Finding, MissingInput, Verdict } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import { type CompositionTable, loadIngredients } from '@larderwright/calc/ingredients';
import { mouldStage } from '@larderwright/calc/mould';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { stopLines } from '../parts/stop-lines.ts';
import { nowIso } from '../state/clock.ts';
import { type OwnLine, ownLines } from '../state/own-lines.ts';
import { binderWords } from '../words/binder.ts';
import { learnWords } from '../words/index.ts';
import { prepBlocks } from './prep-blocks.ts';
import { BINDER_LINE, binderLines } from './to-formula.ts';

/** What calc makes of binders and garnish, their card, and the lines they would be in the formula. */
export interface BinderComputed {
  readonly slice: BinderSlice;
  readonly values: BinderValues;
  readonly findings: readonly Finding[];
  readonly verdicts: readonly Verdict[];
  readonly missing: readonly MissingInput[];
  readonly lines: readonly OwnLine[] | null;
  readonly head: CardHead;
  readonly blocks: readonly CardBlock[];
  readonly stops: readonly string[];
}

learnWords(binderWords);

/** Fetches the composition table and gives the function that computes a batch with it. */
export async function loadBinder(): Promise<(batch: Batch) => BinderComputed> {
  const composition = await loadIngredients();
  return (batch) => computeBinder(batch, composition);
}

/** Counts binders and garnish of a batch for the page and the card. */
export function computeBinder(batch: Batch, composition: CompositionTable): BinderComputed {
  const slice = batch.binder ?? newBinderSlice();
  const { mix } = formulaStage(batch.formula, { composition }).values;
  const written = ownLines(batch.formula.lines, BINDER_LINE).map(({ id }) => id);
  const writtenG = mix.lines.reduce(
    (sum, { lineId, massG }) => sum + (written.includes(lineId) ? (massG ?? 0) : 0),
    0,
  );
  const { values: moulds } = mouldStage(batch.mould, { totalMassG: mix.totalG });
  const context = binderContext(batch, mix, moulds, composition);
  const lines = binderLines(slice, binderStage(slice, context).values);
  // Shares are of the whole with these lines in it, whether they stand in the formula already or not.
  const ownG = lines?.reduce((sum, { grams }) => sum + Number(grams), 0) ?? null;
  const totalG = mix.totalG === null || ownG === null ? mix.totalG : mix.totalG - writtenG + ownG;
  const { values, findings, verdicts, missing } = binderStage(slice, { ...context, totalG });
  return {
    slice,
    values,
    findings,
    verdicts,
    missing,
    lines,
    head: cardHead(batch, [], nowIso()),
    blocks: prepBlocks(batch, slice, values, verdicts, context),
    stops: stopLines(verdicts, findings),
  };
}

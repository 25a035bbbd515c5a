import type { Batch } from '@larderwright/calc/batch';
import {
  type ChillBudgetSlice,
  type ChillBudgetValues,
  chillBudgetStage,
  newChillBudgetSlice,
} from '@larderwright/calc/chill-budget';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { chillBudgetWords } from '../words/chill-budget.ts';
import { learnWords } from '../words/index.ts';
import { type FormulaMasses, formulaMasses } from './formula-masses.ts';
import { tempBlocks } from './temp-blocks.ts';

/** What calc makes of the chill budget, and its card. */
export interface ChillBudgetComputed {
  readonly slice: ChillBudgetSlice;
  readonly values: ChillBudgetValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  /** What the formula weighs by kind of lot. */
  readonly formula: FormulaMasses;
  readonly head: CardHead;
  readonly blocks: readonly CardBlock[];
}

learnWords(chillBudgetWords);

/** Budgets the chill of a batch for the page and the card. */
export function computeChillBudget(batch: Batch): ChillBudgetComputed {
  const slice = batch.chillBudget ?? newChillBudgetSlice();
  const { values, findings, missing } = chillBudgetStage(slice, { familyId: batch.formula.familyId });
  return {
    slice,
    values,
    findings,
    missing,
    formula: formulaMasses(batch),
    head: cardHead(batch, [], nowIso()),
    blocks: tempBlocks(batch, slice, values),
  };
}

import type { Batch } from '@larderwright/calc/batch';
import type { Finding, MissingInput } from '@larderwright/calc/findings';
import { newYieldSlice, type YieldValues, yieldStage } from '@larderwright/calc/yield';
import { type CardHead, cardHead } from '../parts/card-head.ts';
import { nowIso } from '../state/clock.ts';
import { learnWords } from '../words/index.ts';
import { yieldWords } from '../words/yield.ts';
import { type TestCardModel, testCards } from './card-model.ts';

/** What calc makes of the trim tests on the bench. */
export interface YieldComputed {
  readonly values: YieldValues;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  readonly head: CardHead;
  readonly cards: readonly TestCardModel[];
}

learnWords(yieldWords);

/** Reckons the trim tests of a batch. */
export function computeYield(batch: Batch): YieldComputed {
  const slice = batch.yield ?? newYieldSlice();
  const result = yieldStage(slice);
  return {
    ...result,
    head: cardHead(batch, [], nowIso()),
    cards: testCards(slice, result.values, batch.plan?.currency ?? ''),
  };
}

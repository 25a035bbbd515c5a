import type { Batch } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import { type MouldValues, mouldStage } from '@larderwright/calc/mould';
import { learnWords } from '../words/index.ts';
import { mouldWords } from '../words/mould.ts';

/** What calc makes of the moulds, with the weight of the batch they are to hold. */
export interface MouldComputed {
  readonly values: MouldValues;
  readonly findings: readonly Finding[];
  /** Everything in the bowl by the formula, g; null while the formula is not complete. */
  readonly batchG: number | null;
}

learnWords(mouldWords);

/** Weights need no composition: the table is not fetched for this page. */
const NO_TABLE = new Map();

/** Fills the moulds of a batch. */
export function computeMould(batch: Batch): MouldComputed {
  const { mix, lined } = formulaStage(batch.formula, { composition: NO_TABLE }).values;
  const batchG = mix.totalG;
  return { ...mouldStage(batch.mould, { totalMassG: batchG, hasLiningLine: lined !== null }), batchG };
}

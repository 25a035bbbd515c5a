import { cookLimit, cookRuleSet, thresholdC } from '../lethality/index.ts';
import { resolveLogs } from '../thermometer/index.ts';
import { placedThermometers } from './altitude.ts';
import type { Batch } from './record.ts';

/** Where the printed offset is told when the plan names no limit yet, °C. */
const NO_LIMIT_C = 70;

/** Temperature at which a probe's offset matters most: the plan's limit, °C. */
export function offsetLimitC({ process }: Pick<Batch, 'process'>): number {
  const limit = cookLimit(cookRuleSet(process.cookRuleSetId), process.cookLimitId);
  return limit ? thresholdC(limit.stated, 'C') : NO_LIMIT_C;
}

/**
 * The batch with every probe's offset and error from the thermometer it names: typed once, on the thermometer check.
 * The result is for computing and printing, never for keeping.
 */
export function withThermometers(batch: Batch, today: string): Batch {
  const thermometers = placedThermometers(batch);
  if (!thermometers || !batch.process.logs.some(({ thermometerId }) => thermometerId)) return batch;
  const logs = resolveLogs(batch.process.logs, thermometers, offsetLimitC(batch), today);
  return { ...batch, process: { ...batch.process, logs } };
}

import { BATCH_SCHEMA } from './record.ts';

type RawRecord = Readonly<Record<string, unknown>>;

/**
 * What brings a record from one version to the next, by the version it starts from.
 *
 *   1 → 2  states, dispatches and the history of changes: a record of before has none
 */
const STEPS: Readonly<Record<number, (raw: RawRecord) => RawRecord>> = {
  1: (raw) => ({ ...raw, schema: 2, lifecycle: [], dispatches: [], history: [] }),
};

const isRecord = (raw: unknown): raw is RawRecord =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);

/**
 * Brings a record of an older version to this one. What is no such record comes back as it is, for the schema
 * to refuse.
 *
 * @param raw parsed JSON; never changed
 */
export function migrate(raw: unknown): unknown {
  let record = raw;
  while (isRecord(record) && typeof record.schema === 'number' && record.schema < BATCH_SCHEMA) {
    const step = STEPS[record.schema];
    if (!step) return raw;
    record = step(record);
  }
  return record;
}

import * as v from 'valibot';
import { migrate } from './migrate.ts';
import { BATCH_SCHEMA, type Batch } from './record.ts';
import { batchSchema } from './schema/index.ts';

/** What came of reading a stored or imported record. */
export type ReadBatch =
  | { ok: true; batch: Batch }
  | { ok: false; problem: 'newer-version'; version: number }
  | { ok: false; problem: 'damaged'; path: string; found: string };

/**
 * Reads a record of unknown origin.
 *
 * @param raw parsed JSON, of this version or an older one. It is never changed; a damaged record is told apart, not
 *   repaired.
 * @returns the batch, or what is wrong and where
 */
export function readBatch(raw: unknown): ReadBatch {
  if (typeof raw === 'object' && raw !== null && 'schema' in raw) {
    const version = raw.schema;
    if (typeof version === 'number' && version > BATCH_SCHEMA) {
      return { ok: false, problem: 'newer-version', version };
    }
  }
  const result = v.safeParse(batchSchema, migrate(raw), { abortEarly: true });
  if (result.success) return { ok: true, batch: result.output };
  const issue = result.issues[0];
  return { ok: false, problem: 'damaged', path: v.getDotPath(issue) ?? '', found: issue.received };
}

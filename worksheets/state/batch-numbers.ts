import { DEFAULT_NUMBER_SCHEME, nextBatchNumber, schemeProblem } from '@larderwright/calc/batch';
import { nowIso } from './clock.ts';
import { database } from './database.ts';

/** The kitchen's scheme for batch numbers, as kept on this device. */
export async function numberScheme(): Promise<string> {
  const db = await database();
  const kept = await db.get('desk', 'numberScheme');
  return kept === undefined || schemeProblem(kept) ? DEFAULT_NUMBER_SCHEME : kept;
}

/** Keeps a scheme that is sound. */
export async function keepNumberScheme(scheme: string): Promise<void> {
  const db = await database();
  await db.put('desk', scheme, 'numberScheme');
}

/** The next free number of the kitchen's scheme, today. Deleted batches keep theirs. */
export async function nextNumber(): Promise<string> {
  const db = await database();
  const [scheme, shelved, bin] = await Promise.all([
    numberScheme(),
    db.getAll('summaries'),
    db.getAll('bin'),
  ]);
  const taken = [...shelved, ...bin.flatMap((binned) => binned.shelved ?? [])].map(({ batchNo }) => batchNo);
  return nextBatchNumber(scheme, nowIso().slice(0, 10), taken);
}

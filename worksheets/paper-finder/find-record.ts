import { type Batch, readBatch } from '@larderwright/calc/batch';
import { recordChecksum } from '@larderwright/calc/exchange';
import * as say from '#words/paper-finder/find-record.ts';
import { putOnBench, rawBatch } from '../state/storage.ts';
import { readPaperCode } from './paper-code.ts';

/** What became of looking for the record of a sheet. */
export type Found =
  | { state: 'no-code' }
  | { state: 'not-here'; id: string; sum: string }
  | { state: 'unreadable' }
  | { state: 'same'; title: string }
  | { state: 'changed'; title: string; sum: string; now: string };

function titleOf({ product }: Batch): string {
  const name = product.name || say.unnamedBatch;
  return product.batchNo ? `${name} (${product.batchNo})` : name;
}

/** Finds the record that a code names and lays it on the bench. */
export async function findRecord(code: string): Promise<Found> {
  const named = readPaperCode(code);
  if (!named) return { state: 'no-code' };
  const raw = await rawBatch(named.id);
  if (raw === undefined) return { state: 'not-here', ...named };
  const read = readBatch(raw);
  if (!read.ok) return { state: 'unreadable' };
  await putOnBench(named.id);
  const now = recordChecksum(read.batch);
  const title = titleOf(read.batch);
  return now === named.sum ? { state: 'same', title } : { state: 'changed', title, sum: named.sum, now };
}

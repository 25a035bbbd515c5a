import { type Batch, readBatch } from '@larderwright/calc/batch';
import * as say from '#words/records-desk/shelf.ts';
import { allRecords } from '../state/storage.ts';

/** What lies on this device, read. Records that cannot be read are counted, not dropped. */
export interface Shelf {
  /** The newest edit first. */
  readonly batches: readonly Batch[];
  readonly unreadable: number;
  /** Every record by its id, as it lies there. */
  readonly raw: ReadonlyMap<string, unknown>;
}

/** Reads all batches of this device. */
export async function readShelf(): Promise<Shelf> {
  const records = await allRecords();
  const reads = records.map(({ raw }) => readBatch(raw));
  const batches = reads.flatMap((read) => (read.ok ? [read.batch] : []));
  return {
    batches: batches.toSorted((a, b) => (a.updatedAt < b.updatedAt ? 1 : -1)),
    unreadable: reads.length - batches.length,
    raw: new Map(records.map(({ id, raw }) => [id, raw])),
  };
}

/** What a batch is called in a list. */
export function batchTitle({ product, demo }: Batch): string {
  const name = product.name || say.unnamedBatch;
  const number = product.batchNo ? ` · ${product.batchNo}` : '';
  return `${name}${number}${demo ? say.demoInvented : ''}`;
}

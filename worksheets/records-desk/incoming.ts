import type { Batch } from '@larderwright/calc/batch';
import type { FileRecord } from '@larderwright/calc/exchange';

/** How a record of a file stands to what is on this device. */
export type IncomingState = 'new' | 'same' | 'differs' | 'unreadable';

export interface Incoming {
  /** Place in the file, from 1. */
  readonly place: number;
  readonly read: FileRecord;
  readonly state: IncomingState;
  /** Whether it is taken in when the person says so. */
  readonly taken: boolean;
}

function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every(
      (key) =>
        Object.hasOwn(b, key) &&
        sameData((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
    )
  );
}

/**
 * Sets the records of a file against those of this device. What is the same is left out and what differs is taken in
 * beside the one that is here, until a person says otherwise.
 *
 * @param here batches of this device by id, as they lie there
 */
export function compareIncoming(
  reads: readonly FileRecord[],
  here: ReadonlyMap<string, unknown>,
): Incoming[] {
  const known = new Map(here);
  return reads.map((read, index) => {
    const place = index + 1;
    if (!read.ok) return { place, read, state: 'unreadable', taken: false };
    const { batch } = read;
    const twin = known.get(batch.id);
    if (twin === undefined) known.set(batch.id, batch);
    const state = twin === undefined ? 'new' : sameData(twin, batch) ? 'same' : 'differs';
    return { place, read, state, taken: state !== 'same' };
  });
}

/**
 * The batches to be written. A record whose id is in use gets a new one, so that nothing on the device is overwritten.
 *
 * @param newId gives a fresh id
 */
export function takenBatches(incoming: readonly Incoming[], newId: () => string): Batch[] {
  return incoming.flatMap(({ read, state, taken }) => {
    if (!taken || !read.ok) return [];
    return [state === 'new' ? read.batch : { ...read.batch, id: newId() }];
  });
}

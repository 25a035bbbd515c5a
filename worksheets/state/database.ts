import type { Batch, BatchSummary } from '@larderwright/calc/batch';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { DATABASE } from './database-name.ts';

/** A batch as the list of this device shows it. */
export interface Shelved extends BatchSummary {
  /** Counts the writes of the record: a page that knows another number has not seen the last one. */
  rev: number;
  /** When it was put out of the way; null while it is in use. */
  archivedAt: string | null;
}

/** A deleted batch, whole, until its time is up. */
export interface Binned {
  id: string;
  at: string;
  raw: unknown;
  shelved: Shelved | null;
}

/** A record that could not be read, whole. */
export interface Aside {
  id: string;
  at: string;
  raw: unknown;
}

/**
 * What is kept on the device, in the IndexedDB database `larderwright`:
 *
 *   batches    one record a batch, keyed by `id`, exactly the JSON of calc's `Batch`
 *   summaries  what lists and searches need of each batch, made anew at every write; a batch without one gets it
 *              when the list is opened
 *   bin        deleted batches, whole, kept for `BIN_DAYS`
 *   aside      a record that could not be read, kept whole under its id until a person deals with it
 *   desk       small facts about this device; `current` is the id of the batch last on a bench
 *
 * Every write of a batch and its summary is one transaction, and counts the summary's `rev` up. A record is born at
 * the first edit of an empty worksheet, or when a demo is opened; every edit rewrites it within half a second
 * (autosave.ts). Reading goes through calc's `readBatch`: an older version is migrated, a newer one refused, a damaged
 * one moved to `aside`. Nothing is ever sent anywhere.
 *
 * Layouts: 1 had batches, aside and desk. 2 added summaries and bin.
 */
interface DeskSchema extends DBSchema {
  batches: { key: string; value: Batch };
  summaries: { key: string; value: Shelved };
  bin: { key: string; value: Binned };
  aside: { key: string; value: Aside };
  desk: { key: string; value: string };
}

const LAYOUT = 2;
/** A database that has not opened by then is held by something: better a message than a page that waits. */
const PATIENCE_MS = 8_000;

let opening: Promise<IDBPDatabase<DeskSchema>> | null = null;

/** An error of this module's own, told apart by its name as the browser's are. */
function held(): Error {
  return Object.assign(new Error('another tab holds the store'), { name: 'TimeoutError' });
}

function open(): Promise<IDBPDatabase<DeskSchema>> {
  return openDB<DeskSchema>(DATABASE, LAYOUT, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('batches', { keyPath: 'id' });
        db.createObjectStore('aside', { keyPath: 'id' });
        db.createObjectStore('desk');
      }
      if (from < 2) {
        db.createObjectStore('summaries', { keyPath: 'id' });
        db.createObjectStore('bin', { keyPath: 'id' });
      }
    },
    // Another tab wants a newer layout: let go, or it waits for ever.
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
      opening = null;
    },
    terminated() {
      opening = null;
    },
  });
}

/** The database of this device, opened once a page. */
export function database(): Promise<IDBPDatabase<DeskSchema>> {
  if (opening) return opening;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(held()), PATIENCE_MS);
  });
  const mine = Promise.race([open(), late]).finally(() => clearTimeout(timer));
  opening = mine;
  mine.catch(() => {
    if (opening === mine) opening = null;
  });
  return mine;
}

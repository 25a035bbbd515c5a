import { blankEntry, type Entry, entryValue } from '../quantities/index.ts';
import type { Stay } from './in-storage.ts';

/** One time in the cold, in a case or on a counter. */
export interface StorageStay {
  id: string;
  temp: Entry;
  time: Entry;
}

/** Where the finished product is kept. */
export interface StorageSlice {
  /** Kind of food by which Listeria is reckoned; null until a person chooses. */
  listeriaGroupId: string | null;
  stays: StorageStay[];
}

export function newStay(id: string): StorageStay {
  return { id, temp: blankEntry('C'), time: blankEntry('d') };
}

/** Nothing kept yet: one stay, its temperature and time blank. */
export function newStorageSlice(): StorageSlice {
  return { listeriaGroupId: null, stays: [newStay('first')] };
}

/** The stays as numbers; a row in which nothing stands is left out. */
export function staysOf({ stays }: StorageSlice): Stay[] {
  return stays
    .filter(({ temp, time }) => temp.text.trim() !== '' || time.text.trim() !== '')
    .map(({ temp, time }) => ({
      tempC: entryValue('temperature', temp),
      timeMin: entryValue('time', time),
    }));
}

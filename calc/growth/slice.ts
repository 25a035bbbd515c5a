import { blankEntry, type Entry, entryValue } from '../quantities/index.ts';
import type { Stay } from './in-storage.ts';
import type { MeasuredProduct } from './listeria-by-product.ts';

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
  /** pH and water activity as a meter gave them; absent until a person wants them. */
  measured?: { ph: Entry; waterActivity: Entry };
}

/** A blank stay in the cold: nothing is known of it. */
export function newStay(id: string): StorageStay {
  return { id, temp: blankEntry('C'), time: blankEntry('d') };
}

/** Nothing kept yet: one stay, its temperature and time blank. */
export function newStorageSlice(): StorageSlice {
  return { listeriaGroupId: null, stays: [newStay('first')] };
}

/** Nothing measured of the product yet. */
export function newMeasured(): NonNullable<StorageSlice['measured']> {
  return { ph: blankEntry('ratio'), waterActivity: blankEntry('ratio') };
}

/** What was measured of the product, as numbers. */
export function measuredOf({ measured }: StorageSlice): MeasuredProduct {
  if (measured === undefined) return { ph: null, waterActivity: null };
  return { ph: entryValue('ratio', measured.ph), waterActivity: entryValue('ratio', measured.waterActivity) };
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

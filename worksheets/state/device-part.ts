import type { DevicePart } from '@larderwright/calc/exchange';
import { database } from './database.ts';
import { keptSetting } from './kept-setting.ts';
import { lookAtKitchen } from './kitchen.ts';
import { keptOvens } from './oven-records.ts';

/** Batches that were put out of the way. The mark is of this device, not of the record: a copy handed on has none. */
async function archivedHere(): Promise<{ id: string; at: string }[]> {
  const db = await database();
  const summaries = await db.getAll('summaries');
  return summaries.flatMap(({ id, archivedAt }) => (archivedAt === null ? [] : [{ id, at: archivedAt }]));
}

/**
 * What lies on this device beside its batches, for the file of all there is. A new kind of thing that is kept here gets
 * a key in `calc/exchange/device-part.ts`, its line below, and its rows in the table of what a file holds.
 */
export async function devicePart(): Promise<DevicePart> {
  const archived = await archivedHere();
  return {
    ovens: keptOvens(),
    ...(keptSetting('version') === undefined ? {} : { kitchen: lookAtKitchen() }),
    ...(archived.length === 0 ? {} : { archived }),
  };
}

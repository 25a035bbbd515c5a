import type { DevicePart } from '@larderwright/calc/exchange';
import { keptOvens } from './oven-records.ts';

/**
 * What lies on this device beside its batches, for the file of all there is. A new kind of thing that is kept here gets
 * a key in `calc/exchange/device-part.ts`, its line below, and its rows in the table of what a file holds.
 */
export function devicePart(): DevicePart {
  return { ovens: keptOvens() };
}

import type { Slot } from '../slot.ts';

export const notNamed = 'not named';
export const off = (text: string, flag: Slot): Slot => [text, flag, ' off'];
export const unknownOffset = 'unknown offset';
export const notEntered = 'NOT ENTERED';
export const readingsKeptDecidePrinted = (count: number, length: number) =>
  `. ${count} readings kept; the ${length} that decide are printed`;
export const readings = (count: number) => `. ${count} readings`;
export const probeReadsError = (
  name: string,
  probe: string,
  value: Slot,
  value2: Slot,
  count: string,
): Slot => [name, ': probe ', probe, ', reads ', value, ', error ', value2, count];
export const probeReadsCOffErrorC = 'Probe ________  reads ____ °C off, error ± ____ °C';

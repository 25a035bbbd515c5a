import { entryValue } from '../quantities/index.ts';
import type { HeatLot } from './balance.ts';
import { BACK_FAT, type HeatContent, LEAN, meatHeat, trimOfFat, waterHeat } from './heat-contents.ts';
import type { ChillBudgetSlice, ChillLot, FatHeat } from './slice.ts';

/** A lot with its fields read. `ready` is null while something of it is unknown. */
export interface ReadLot {
  readonly lot: ChillLot;
  readonly massG: number | null;
  readonly tempC: number | null;
  readonly ready: HeatLot | null;
}

/** Whether heat of a lot is that of meat: what can be chilled ahead as one pile. */
export function isMeatLot({ kind }: ChillLot): boolean {
  return kind === 'lean' || kind === 'mixed' || kind === 'fat';
}

function heatOf(lot: ChillLot, fatHeat: FatHeat): HeatContent | null {
  const melting = fatHeat === 'with-melting';
  switch (lot.kind) {
    case 'lean':
      return meatHeat(LEAN, { melting });
    case 'fat':
      return meatHeat(BACK_FAT, { melting });
    case 'mixed': {
      const fat = entryValue('fraction', lot.fat);
      return fat === null ? null : meatHeat(trimOfFat(fat), { melting });
    }
    case 'liquid':
    case 'ice':
      return waterHeat();
  }
}

/** Begun lots, read. A lot nobody has begun is none; one begun in part is unknown. */
export function readLots(slice: ChillBudgetSlice, fatHeat: FatHeat = slice.fatHeat): ReadLot[] {
  return slice.lots
    .filter(
      ({ name, mass, temp }) => name.trim() !== '' || mass.text.trim() !== '' || temp.text.trim() !== '',
    )
    .map((lot) => {
      const massG = entryValue('mass', lot.mass);
      const tempC = entryValue('temperature', lot.temp);
      const heat = heatOf(lot, fatHeat);
      const sound = massG !== null && tempC !== null && heat !== null && tempC >= COLDEST_LOT_C;
      return { lot, massG, tempC, ready: sound ? { massG, tempC, heat } : null };
    });
}

/** Coldest lot the handbook's method is good for, °C: its enthalpy is zero at −40. */
const COLDEST_LOT_C = -38;

import { boilingPointC, pressureAtKPa } from '../heat/index.ts';

/** Heights and pressures of kitchens. Outside them a figure is a slip. */
export const ALTITUDE_M = { min: 0, max: 5500 } as const;
export const PRESSURE_KPA = { min: 50, max: 110 } as const;

/** Where the boiling point comes from. */
export interface LocalBoil {
  readonly tempC: number;
  readonly pressureKPa: number;
  readonly from: 'pressure' | 'altitude';
}

/**
 * Temperature at which water boils in a kitchen, °C. A measured pressure rules; from the height alone the weather may
 * move it by 1 °C either way. Null where neither is known or usable.
 *
 * Sources: `icao-standard-atmosphere`, `hyland-wexler-1983`.
 */
export function localBoil(pressureKPa: number | null, altitudeM: number | null): LocalBoil | null {
  const within = (value: number, { min, max }: { min: number; max: number }) => value >= min && value <= max;
  if (pressureKPa !== null)
    return within(pressureKPa, PRESSURE_KPA)
      ? { tempC: boilingPointC(pressureKPa), pressureKPa, from: 'pressure' }
      : null;
  if (altitudeM === null || !within(altitudeM, ALTITUDE_M)) return null;
  const atKPa = pressureAtKPa(altitudeM);
  return { tempC: boilingPointC(atKPa), pressureKPa: atKPa, from: 'altitude' };
}

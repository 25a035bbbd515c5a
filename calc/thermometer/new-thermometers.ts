import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { Thermometer, ThermometerSlice } from './slice.ts';

/** A thermometer nobody has checked. */
export function newThermometer(id: string): Thermometer {
  return {
    id,
    name: '',
    ice: blankEntry('C'),
    boil: blankEntry('C'),
    step: blankEntry('dC'),
    error: blankEntry('dC'),
    checkedOn: '',
    checkedBy: '',
  };
}

/** One unchecked thermometer; tolerance 1 °C and a week between checks as marked defaults. Common practice, no source. */
export function newThermometerSlice(): ThermometerSlice {
  return {
    altitude: blankEntry('m'),
    pressure: blankEntry('hPa'),
    tolerance: defaultEntry('1', 'dC'),
    goodFor: defaultEntry('7', 'd'),
    thermometers: [newThermometer('first')],
  };
}

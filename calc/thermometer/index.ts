export {
  type CheckedThermometer,
  type CheckReason,
  type CheckRequest,
  checkThermometer,
} from './check-thermometer.ts';
export { ALTITUDE_M, type LocalBoil, localBoil, PRESSURE_KPA } from './local-boil.ts';
export { newThermometer, newThermometerSlice } from './new-thermometers.ts';
export { displayMustShow, offsetAtC } from './offset-at.ts';
export { resolveLogs } from './resolve-logs.ts';
export type { Thermometer, ThermometerSlice } from './slice.ts';
export {
  daysByThermometer,
  placeOf,
  type ThermometerFindingId,
  type ThermometerValues,
  thermometerStage,
} from './stage.ts';

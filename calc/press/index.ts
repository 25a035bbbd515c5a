export { pressBandOfFamily } from './band-of-family.ts';
export { HIGHEST_BOARD_KPA, PRESS_BANDS, type PressBand } from './bands.ts';
export { STANDARD_GRAVITY_M_PER_S2 } from './gravity.ts';
export { pressLoadKg, pressPressureKPa } from './press-pressure.ts';
export type * from './slice.ts';
export { type PressFindingId, type PressValues, pressStage } from './stage.ts';

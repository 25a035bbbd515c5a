import type { Tempering, TemperRequest } from './tempering.ts';

/** Why a request is not run. */
export type TemperRefusal = 'no-measures' | 'not-below-freezing' | 'already-frozen';

/** Where a cube stops being worth the wait, mm and °C. */
const CUBE_RANGE_MM = { min: 5, max: 80 };
const START_RANGE_C = { min: -1.7, max: 30 };
const FREEZER_RANGE_C = { min: -40, max: -2 };

/** Whether a tempering can be run, and why not. */
export function temperRefusal({
  cubeMm,
  startC,
  freezerC,
  filmWm2K,
  longestMin,
}: TemperRequest): TemperRefusal | null {
  if (![cubeMm, filmWm2K, longestMin].every((value) => value > 0 && Number.isFinite(value)))
    return 'no-measures';
  if (![startC, freezerC].every(Number.isFinite)) return 'no-measures';
  if (cubeMm < CUBE_RANGE_MM.min || cubeMm > CUBE_RANGE_MM.max || startC > START_RANGE_C.max)
    return 'no-measures';
  if (startC <= START_RANGE_C.min) return 'already-frozen';
  if (freezerC > FREEZER_RANGE_C.max) return 'not-below-freezing';
  return freezerC < FREEZER_RANGE_C.min ? 'no-measures' : null;
}

/**
 * How long cubes of lean lie in a freezer until they are firm at the edge and not solid, by the heat engine at its quick
 * tier. The usual 15–20 minutes for 25 mm cubes (common practice, no source) lie between firm and stiff. A planning
 * figure: cubes that touch, a full tray or a warm freezer take longer; the thumb decides.
 * The engine is fetched by this call and not before.
 *
 * @returns null for what cannot be run; `temperRefusal` tells why
 */
export async function temperInFreezer(request: TemperRequest): Promise<Tempering | null> {
  if (temperRefusal(request) !== null) return null;
  const { runTempering } = await import('./temper-run.ts');
  return runTempering(request);
}

/** Film of a still freezer, W/(m²·K). Common practice, no source. */
export const STILL_FREEZER_FILM_WM2K = 12;

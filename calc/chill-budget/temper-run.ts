import { foodMaterial, iceFraction, simulate } from '../heat/index.ts';
import { LEAN, LEAN_FREEZES_C } from './heat-contents.ts';
import type { Tempering, TemperRequest } from './tempering.ts';

/** The middle of a face this far below its freezing point is firm to the thumb, °C. Common practice, no source. */
const FIRM_BELOW_FREEZING_C = 0.3;
/** Share of the water that is ice when a cube begins to be solid, and when it is. Common practice, no source. */
const STIFF_ICE = 0.2;
const SOLID_ICE = 0.5;
const EVERY_MIN = 0.5;

/** Runs the cube. Loaded only when asked for: it brings the heat engine with it. */
export function runTempering({
  cubeMm,
  startC,
  freezerC,
  filmWm2K,
  longestMin,
}: TemperRequest): Tempering | null {
  const material = foodMaterial(LEAN, { freezingC: LEAN_FREEZES_C, enthalpy: 'chen' });
  if (material === null) return null;
  const run = simulate(
    { shape: { kind: 'cube', sideMm: cubeMm }, material, startC },
    [
      {
        kind: 'freeze',
        end: { when: 'time', minutes: longestMin },
        air: { tempC: freezerC, filmWm2K },
      },
    ],
    { tier: 'preview', everyMin: EVERY_MIN, pictureEveryMin: EVERY_MIN },
  );
  if (run === null) return null;
  const { volumeM3 } = run.network.solid;
  const whole = volumeM3.reduce((sum, volume) => sum + volume, 0);
  const iceShares = run.pictures.map(({ tempC }) =>
    tempC.reduce(
      (sum, t, node) =>
        sum + (iceFraction(LEAN, LEAN_FREEZES_C, t) * (volumeM3[node] ?? 0)) / whole / LEAN.water,
      0,
    ),
  );
  const pictureMin = run.pictures.map(({ timeMin }) => timeMin);
  const firmMin = firstAt(
    [...run.timesMin],
    [...run.topC].map((t) => -t),
    -(LEAN_FREEZES_C - FIRM_BELOW_FREEZING_C),
  );
  const at = (curve: ArrayLike<number>, minutes: number | null) =>
    minutes === null ? null : valueAt(run.timesMin, curve, minutes);
  return {
    firmMin,
    stiffMin: firstAt(pictureMin, iceShares, STIFF_ICE),
    solidMin: firstAt(pictureMin, iceShares, SOLID_ICE),
    coreAtFirmC: at(run.hottestC, firmMin),
    longestMin,
  };
}

/** First time a rising curve reaches a value, between its points; null when it never does. */
function firstAt(times: readonly number[], values: readonly number[], wanted: number): number | null {
  const index = values.findIndex((value) => value >= wanted);
  if (index === -1) return null;
  const [t1 = 0, v1 = 0] = [times[index], values[index]];
  const [t0, v0] = [times[index - 1], values[index - 1]];
  if (t0 === undefined || v0 === undefined || v1 === v0) return t1;
  return t0 + ((t1 - t0) * (wanted - v0)) / (v1 - v0);
}

function valueAt(times: ArrayLike<number>, values: ArrayLike<number>, at: number): number | null {
  for (let i = 1; i < times.length; i++) {
    const [t0 = 0, t1 = 0] = [times[i - 1], times[i]];
    const [v0 = 0, v1 = 0] = [values[i - 1], values[i]];
    if (at <= t1) return t1 === t0 ? v1 : v0 + ((v1 - v0) * (at - t0)) / (t1 - t0);
  }
  return values[values.length - 1] ?? null;
}

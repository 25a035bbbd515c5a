/** Standard pressure at sea level, kPa. Source: `icao-standard-atmosphere`. */
export const SEA_LEVEL_KPA = 101.325;

/** Pressure of the standard atmosphere at an altitude below 11 000 m, kPa. Source: `icao-standard-atmosphere`. */
export function pressureAtKPa(altitudeM: number): number {
  return SEA_LEVEL_KPA * (1 - 2.25577e-5 * altitudeM) ** 5.25588;
}

/**
 * Saturation pressure over liquid water, kPa, 0–200 °C.
 * Source: Hyland & Wexler (1983) as in ASHRAE Fundamentals, from memory.
 */
export function saturationKPa(tempC: number): number {
  const t = tempC + 273.15;
  const exponent =
    -5.8002206e3 / t +
    1.3914993 -
    4.8640239e-2 * t +
    4.1764768e-5 * t * t -
    1.4452093e-8 * t ** 3 +
    6.5459673 * Math.log(t);
  return Math.exp(exponent) / 1000;
}

/** Temperature at which water boils under a pressure, °C, within 0.001. */
export function boilingPointC(pressureKPa: number): number {
  let low = 0;
  let high = 200;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (saturationKPa(middle) < pressureKPa) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Heat that a gram of water takes up to evaporate, J/kg, 0–100 °C. From memory of steam tables: ±0.3 %. */
export function evaporationHeatJkg(tempC: number): number {
  return 2.5009e6 - 2380 * tempC;
}

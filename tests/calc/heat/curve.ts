/** Value of a curve at a time, by the straight line between its points. */
export function valueAt(timesMin: Float64Array, values: Float64Array, timeMin: number): number {
  const later = timesMin.findIndex((time) => time >= timeMin - 1e-9);
  const [t1, v1] = [timesMin[later] ?? Number.NaN, values[later] ?? Number.NaN];
  if (later <= 0 || Math.abs(t1 - timeMin) < 1e-9) return v1;
  const [t0, v0] = [timesMin[later - 1] ?? Number.NaN, values[later - 1] ?? Number.NaN];
  return v0 + ((v1 - v0) * (timeMin - t0)) / (t1 - t0);
}

/** First time after `fromMin` at which a curve passes a value, upward or downward. NaN when it never does. */
export function timeTo(
  timesMin: Float64Array,
  values: Float64Array,
  wanted: number,
  way: 'up' | 'down' = 'up',
  fromMin = 0,
): number {
  const sign = way === 'up' ? 1 : -1;
  for (let i = 1; i < timesMin.length; i++) {
    const [v0, v1] = [values[i - 1] ?? Number.NaN, values[i] ?? Number.NaN];
    const [t0, t1] = [timesMin[i - 1] ?? Number.NaN, timesMin[i] ?? Number.NaN];
    if (t1 <= fromMin || sign * v0 >= sign * wanted || sign * v1 < sign * wanted) continue;
    return t0 + ((wanted - v0) / (v1 - v0)) * (t1 - t0);
  }
  return Number.NaN;
}

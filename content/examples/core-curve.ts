/** One stretch of a cook or a chill: what stands around the mould, until when, and how often the core is read. */
export interface Stretch {
  readonly until: string;
  readonly mediumC: number;
  readonly everyMin: number;
}

/** How slowly a product follows, min: first its skin behind the water or air, then its middle behind the skin. */
export interface Sluggishness {
  readonly skinMin: number;
  readonly coreMin: number;
}

const clockMin = (clock: string) => {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return hours * 60 + minutes;
};
const clockText = (min: number) =>
  `${String(Math.floor(min / 60)).padStart(2, '0')}:${String(min % 60).padStart(2, '0')}`;

/**
 * Readings for an invented log, as a probe with one decimal would show them: `08:40 7.0, 08:50 7.4, …`.
 * Two lags in a row give what real cores do: a slow start, and a rise that goes on after the bath. It stands for no
 * product and predicts nothing.
 */
export function coreReadings(
  startClock: string,
  startC: number,
  { skinMin, coreMin }: Sluggishness,
  stretches: readonly Stretch[],
): string {
  let skin = startC;
  let core = startC;
  let minute = clockMin(startClock);
  const read = () => `${clockText(minute)} ${core.toFixed(1)}`;
  const readings = [read()];
  for (const { until, mediumC, everyMin } of stretches) {
    const from = minute;
    const end = clockMin(until);
    while (minute < end) {
      skin += (mediumC - skin) / skinMin;
      core += (skin - core) / coreMin;
      minute += 1;
      if ((minute - from) % everyMin === 0 || minute === end) readings.push(read());
    }
  }
  return readings.join(', ');
}

import { clockAt, dateAt, dayWords } from '../parts/clock-text.ts';
import type { ChillStand } from '../press-and-chill/chill-stand-of.ts';
import { limitTemp } from './limit-temp.ts';

/** Clock with the day where it is not the day of `besideMs`. */
export function clockBeside(atMs: number, offsetMin: number, besideMs: number | null): string {
  const date = dateAt(atMs, offsetMin);
  const clock = clockAt(atMs, offsetMin);
  return besideMs !== null && dateAt(besideMs, offsetMin) === date ? clock : `${clock} on ${dayWords(date)}`;
}

/** The one line that is read from across the kitchen. */
export function chillStandLine({ kind }: ChillStand, reasonTitle: string): string {
  switch (kind) {
    case 'missed':
      return 'A leg is missed: hold, do not serve.';
    case 'done':
      return 'Every leg met.';
    case 'act-now':
      return 'At this pace a leg will be missed: act now.';
    case 'act-by':
      return 'The clock runs: keep the probe in, keep reading.';
    case 'unknown':
      return reasonTitle;
  }
}

/** The next deadline as a clock: `21 °C (69 °F) by 15:24`, and when it is expected. */
export function nextDeadlineWords(
  { next, kind }: ChillStand,
  offsetMin: number,
  lastMs: number | null,
): string | null {
  if (next === null) return null;
  const target = limitTemp(next.leg.to, 'maximum').text;
  // A deadline is shown as the minute it begins in: reading it as later would be the dangerous side.
  const by = clockBeside(Math.floor(next.latestMs / 60_000) * 60_000, offsetMin, lastMs);
  const at = next.projectedMs === null ? null : clockBeside(next.projectedMs, offsetMin, lastMs);
  if (kind === 'act-now' && at !== null) {
    return `${target} has to be shown by ${by}; at this pace it is there at about ${at}. Unmould onto a rack, blast or ice.`;
  }
  return `${target} has to be shown by ${by}.${at === null ? '' : ` At this pace it is there at about ${at}.`}`;
}

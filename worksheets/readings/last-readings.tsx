import type { ProbeReading } from '@larderwright/calc/process';
import type { Entry } from '@larderwright/calc/quantities';
import * as say from '#words/readings/last-readings.ts';
import { wallOf } from '../parts/clock-text.ts';
import { byTime } from './edits.ts';

/** How many of the newest readings stand beside the entry. */
const NEWEST = 4;

/** A figure with its unit; anything else as it was typed, in quotes. */
function shown({ text, unit }: Entry): string {
  const typed = text.trim();
  if (typed === '') return say.blank;
  return /^[-−]?\d[\d.,]*$/.test(typed) ? `${typed.slice(0, 12)} °${unit}` : `"${typed.slice(0, 12)}"`;
}

/** The newest readings, newest first: what was just written, without scrolling. */
export function LastReadings({ readings }: { readings: readonly ProbeReading[] }) {
  if (readings.length === 0) return <p class="say">{say.noReadingYet}</p>;
  const newest = byTime(readings).slice(-NEWEST).reverse();
  return (
    <ul class="last-readings" aria-label={say.newestReadings}>
      {newest.map((reading) => (
        <li key={reading.id}>
          {wallOf(reading.at)?.clock} {'→'} <strong>{shown(reading.temperature)}</strong>
          {reading.excluded ? say.excluded : ''}
        </li>
      ))}
    </ul>
  );
}

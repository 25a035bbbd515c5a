import { isoInZone, latestMoment, type MomentRead, momentOf } from '../parts/clock-text.ts';
import { zoneHere } from './clock.ts';
import { $batch, emptyBatch } from './store.ts';

/** Zone the batch's clock times are written in; this device's while there is no batch yet. */
export function benchZone(): string {
  const batch = $batch.get();
  return batch.id === emptyBatch.id ? zoneHere() : batch.zone;
}

/** Now, on the clock of the batch. */
export function benchNow(): string {
  return isoInZone(Date.now(), benchZone());
}

/**
 * A time of day as typed, on the clock of the batch.
 *
 * @param date `YYYY-MM-DD`; blank takes the latest such time that has been
 * @param nearMs which of two is meant where the clocks go back
 */
export function benchMoment(date: string, clockText: string, nearMs = Date.now()): MomentRead {
  return date === ''
    ? latestMoment(clockText, benchZone(), Date.now())
    : momentOf(date, clockText, benchZone(), nearMs);
}

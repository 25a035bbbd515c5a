import type { ProbeLog, ProbeReading } from '../process/index.ts';

/** A reading typed in this long after it was taken is printed with both times, min. */
export const LATE_ENTRY_MIN = 15;

const MS_PER_MIN = 60_000;

/** Minutes between reading a probe and typing it in; null when either time is not known. */
export function entryDelayMin(reading: ProbeReading): number | null {
  if (reading.enteredAt === null) return null;
  const delayMs = Date.parse(reading.enteredAt) - Date.parse(reading.at);
  return Number.isFinite(delayMs) ? delayMs / MS_PER_MIN : null;
}

/** Readings of a log that were typed in late, or before they were taken, in the order of the log. */
export function lateEntries(log: ProbeLog): ProbeReading[] {
  return log.readings.filter((reading) => {
    const delayMin = entryDelayMin(reading);
    return delayMin !== null && Math.abs(delayMin) > LATE_ENTRY_MIN;
  });
}

const DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const MS_PER_DAY = 86_400_000;

/** Days since 1970 of a calendar date, or null for what is no date. */
function dayNumber(date: string): number | null {
  const parts = DATE.exec(date);
  if (!parts) return null;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const ms = Date.UTC(year, month - 1, day);
  const back = new Date(ms);
  return back.getUTCMonth() === month - 1 && back.getUTCDate() === day ? ms / MS_PER_DAY : null;
}

/** The calendar date a stamp was written on, by its own clock. */
export function dateOfStamp(stamp: string | null): string | null {
  const date = stamp?.trim().slice(0, 10) ?? '';
  return dayNumber(date) === null ? null : date;
}

/**
 * The last day to use a food by, counted from the day of its cook. Packing, repacking or slicing starts no new clock.
 * @param lifeDays whole days; a part of a day is not counted
 * @param cookDayCounts the day of the cook is day one (United States Food Code 3-501.17), so a life of five ends four
 *   days later
 * @returns ISO date, or null for what is no date or no life
 * @example useByDate('2026-03-10', 5, true) // '2026-03-14'
 */
export function useByDate(cookedOn: string, lifeDays: number, cookDayCounts: boolean): string | null {
  const from = dayNumber(cookedOn);
  const days = Math.floor(lifeDays);
  if (from === null || !(days >= 1) || !Number.isFinite(days) || days > 3650) return null;
  const last = from + days - (cookDayCounts ? 1 : 0);
  return new Date(last * MS_PER_DAY).toISOString().slice(0, 10);
}

/** Whether one ISO date lies after another; null when either is none. */
export function isLater(date: string, than: string): boolean | null {
  const [a, b] = [dayNumber(date), dayNumber(than)];
  return a === null || b === null ? null : a > b;
}

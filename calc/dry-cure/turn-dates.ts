/** No cure is turned for longer than this many days; beyond it a date was mistyped. */
const MOST_DAYS = 400;
const MS_PER_DAY = 86_400_000;
const ISO_DATE = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Dates on which a bag is turned: every day after the first, up to and with the last day of cure.
 *
 * @param startedOn ISO date
 * @param days whole days of cure
 * @returns ISO dates; empty when the date or the days are unusable
 * @example turnDates('2026-02-27', 3) // ['2026-02-28', '2026-03-01', '2026-03-02']
 */
export function turnDates(startedOn: string, days: number): string[] {
  if (!Number.isInteger(days) || days < 1 || days > MOST_DAYS) return [];
  return Array.from({ length: days }, (_, index) => dateAfter(startedOn, index + 1)).filter(
    (date) => date !== null,
  );
}

/** The ISO date so many days later, or null when the date cannot be read. */
export function dateAfter(startedOn: string, days: number): string | null {
  if (!ISO_DATE.test(startedOn) || !Number.isInteger(days)) return null;
  const start = Date.parse(`${startedOn}T00:00:00Z`);
  if (Number.isNaN(start) || new Date(start).toISOString().slice(0, 10) !== startedOn) return null;
  return new Date(start + days * MS_PER_DAY).toISOString().slice(0, 10);
}

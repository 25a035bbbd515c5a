const STAMP =
  /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?(Z|[+-]\d{2}(?::?\d{2})?)$/;

const MS_PER_MIN = 60_000;

/** Minutes east of Greenwich that `Z`, `+01`, `+0100` or `+01:00` name, or null. */
function offsetMinutes(text: string): number | null {
  if (text === 'Z') return 0;
  const hours = Number(text.slice(1, 3));
  const minutes = Number(text.slice(3).replace(':', '') || '0');
  if (hours > 14 || minutes > 59) return null;
  return (text.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}

/**
 * The moment an ISO 8601 stamp names, in milliseconds since 1970 UTC.
 * A stamp without a zone offset names no moment and gives null, as does a date that is not in the calendar.
 * @example instantMs('2026-03-10T11:20:00+01:00') === instantMs('2026-03-10T10:20:00Z')
 */
export function instantMs(stamp: string | null): number | null {
  const parts = stamp === null ? null : STAMP.exec(stamp.trim());
  if (!parts) return null;
  const [, year, month, day, hour, minute, second = '0', fraction = '0', zone = ''] = parts;
  const offset = offsetMinutes(zone);
  if (offset === null || Number(hour) > 23 || Number(minute) > 59 || Number(second) > 59) return null;
  const wall = Date.UTC(
    Number(year),
    Number(month) - 1,
    Number(day),
    Number(hour),
    Number(minute),
    Number(second),
  );
  if (new Date(wall).getUTCDate() !== Number(day) || Number(month) < 1 || Number(month) > 12) return null;
  return wall + Math.trunc(Number(`0.${fraction}`) * 1000) - offset * MS_PER_MIN;
}

/**
 * Write a moment as ISO 8601 with the zone offset of another stamp, so that a predicted time reads in the clock of
 * the log it was drawn from. Whole seconds.
 * @param like a stamp with an offset; UTC where it has none
 * @example isoLike(instantMs('2026-03-10T11:20:00+01:00') ?? 0, '2026-03-10T11:00:00+01:00') // '2026-03-10T11:20:00+01:00'
 */
export function isoLike(ms: number, like: string): string {
  const zone = STAMP.exec(like.trim())?.[8] ?? 'Z';
  const offset = offsetMinutes(zone) ?? 0;
  const wall = new Date(Math.round(ms / 1000) * 1000 + offset * MS_PER_MIN).toISOString().slice(0, 19);
  if (zone === 'Z') return `${wall}Z`;
  const digits = zone.slice(1).replace(':', '').padEnd(4, '0');
  return `${wall}${zone.slice(0, 1)}${digits.slice(0, 2)}:${digits.slice(2)}`;
}

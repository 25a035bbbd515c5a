const WALL =
  /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::\d{2}(?:\.\d+)?)?)?(?:Z|[+-]\d{2}(?::?\d{2})?)?$/;
const MS_PER_MIN = 60_000;

/**
 * Minutes of a wall-clock moment since 1970, as if the kitchen kept no time zone: a plan says "on Thursday at nine",
 * whatever the clocks do in between. An offset is read past; a date alone is its midnight. Null for what is no date.
 * @example wallMin('1970-01-02T00:01') // 1441
 */
export function wallMin(stamp: string | null): number | null {
  const parts = stamp === null ? null : WALL.exec(stamp.trim());
  if (!parts) return null;
  const [, year, month, day, hour = '0', minute = '0'] = parts;
  const [y, m, d, h, min] = [year, month, day, hour, minute].map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const ms = Date.UTC(y, m - 1, d, h, min);
  const date = new Date(ms);
  const same = date.getUTCMonth() === m - 1 && date.getUTCDate() === d && h < 24 && min < 60;
  return same ? ms / MS_PER_MIN : null;
}

/**
 * The wall-clock stamp of such minutes, to the minute before.
 * @example wallStamp(1441) // '1970-01-02T00:01'
 */
export function wallStamp(minutes: number): string {
  return new Date(Math.floor(minutes) * MS_PER_MIN).toISOString().slice(0, 16);
}

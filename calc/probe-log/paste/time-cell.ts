/** What one cell of a time column says. Minutes are of the day for a clock, since the start for a duration. */
export type TimeCell =
  | { readonly kind: 'stamp'; readonly date: string; readonly clockMin: number; readonly zone: string | null }
  | { readonly kind: 'date'; readonly date: string }
  | { readonly kind: 'clock'; readonly clockMin: number };

export type DateOrder = 'day-month' | 'month-day';

const DATE = /^(?:(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})|(\d{1,2})([./-])(\d{1,2})[./-](\d{4}|\d{2}))$/;
const CLOCK = /^(\d{1,2})[:h](\d{2})(?::(\d{2}(?:[.,]\d+)?))?(?:\s?([ap])\.?m\.?)?$/i;
const STAMP =
  /^(\S+?)(?:T|,?\s+)(\d{1,2}[:h]\d{2}(?::\d{2}(?:[.,]\d+)?)?(?:\s?[ap]\.?m\.?)?)\s?(Z|[+-]\d{2}:?\d{2})?$/i;
const DURATION = /^(\d{1,4}):(\d{2})(?::(\d{2}))?$/;

function clockMinutes(text: string): number | null {
  const [, hour, minute, second = '0', half] = CLOCK.exec(text) ?? [];
  if (hour === undefined) return null;
  let hours = Number(hour);
  const minutes = Number(minute);
  const seconds = Number(second.replace(',', '.'));
  if (half !== undefined) {
    if (hours < 1 || hours > 12) return null;
    hours = (hours % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
  }
  return hours > 23 || minutes > 59 || seconds >= 60 ? null : hours * 60 + minutes + seconds / 60;
}

/** Both numbers of `4/3/2026` may be a month: only then does the order matter. */
export function isAmbiguousDate(text: string): boolean {
  const [, , , , first, separator, second] = DATE.exec(text) ?? [];
  return separator === '/' && Number(first) <= 12 && Number(second) <= 12 && first !== second;
}

/** ISO date of a written date, or null. Dots and hyphens after a day mean day first; slashes need the order. */
export function isoDate(text: string, order: DateOrder | null): string | null {
  const parts = DATE.exec(text);
  if (!parts) return null;
  const [, isoYear, isoMonth, isoDay, first, separator, second, shortYear] = parts;
  if (isoYear !== undefined) return calendar(isoYear, isoMonth ?? '', isoDay ?? '');
  const year = shortYear?.length === 2 ? `20${shortYear}` : (shortYear ?? '');
  const monthFirst = separator === '/' && (order === 'month-day' || (order === null && Number(second) > 12));
  return monthFirst ? calendar(year, first ?? '', second ?? '') : calendar(year, second ?? '', first ?? '');
}

function calendar(year: string, month: string, day: string): string | null {
  const iso = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const date = new Date(`${iso}T00:00:00Z`);
  return Number.isNaN(date.getTime()) || date.getUTCDate() !== Number(day) ? null : iso;
}

/** The date part of a stamp or of a date cell, as written; null for anything else. */
export function writtenDate(text: string): string | null {
  if (DATE.test(text)) return text;
  const date = STAMP.exec(text)?.[1];
  return date !== undefined && DATE.test(date) ? date : null;
}

/** Read a cell as a stamp, a date or a clock. */
export function timeCell(text: string, order: DateOrder | null): TimeCell | null {
  const clockMin = clockMinutes(text);
  if (clockMin !== null) return { kind: 'clock', clockMin };
  const alone = isoDate(text, order);
  if (alone !== null) return { kind: 'date', date: alone };
  const [, dateText = '', clockText = '', zone] = STAMP.exec(text) ?? [];
  const date = isoDate(dateText, order);
  const stampMin = clockMinutes(clockText);
  return date === null || stampMin === null
    ? null
    : { kind: 'stamp', date, clockMin: stampMin, zone: zone ?? null };
}

/** Minutes since the start that `1:30` or `0:01:30` name, or null. */
export function durationMinutes(text: string): number | null {
  const [, hours, minutes, seconds = '0'] = DURATION.exec(text) ?? [];
  if (hours === undefined || Number(minutes) > 59 || Number(seconds) > 59) return null;
  return Number(hours) * 60 + Number(minutes) + Number(seconds) / 60;
}

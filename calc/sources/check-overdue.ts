/** Months after which figures must be compared with their text again. House rule. */
export const MONTHS_BETWEEN_CHECKS = 12;

const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})(?:$|T)/;

function readDate(iso: string): { year: number; month: number; day: number } | null {
  const [, year, month, day] = ISO_DATE.exec(iso) ?? [];
  const date = new Date(`${year}-${month}-${day}T00:00:00Z`);
  if (Number.isNaN(date.getTime()) || date.getUTCDate() !== Number(day)) return null;
  return { year: Number(year), month: Number(month), day: Number(day) };
}

/**
 * Whether twelve months have passed since figures were last compared with their source.
 * The same day a year on is not yet overdue, the next day is. A date that cannot be read counts as overdue.
 *
 * @param checked a source or rule set, or the ISO date itself
 * @param todayIso ISO date or date-time; the caller's clock, for `calc` has none
 * @example isCheckOverdue('2025-11-25', '2026-11-26') // true
 */
export function isCheckOverdue(checked: string | { readonly reviewed: string }, todayIso: string): boolean {
  const reviewed = readDate(typeof checked === 'string' ? checked : checked.reviewed);
  const today = readDate(todayIso);
  if (!reviewed || !today) return true;
  const due = reviewed.year * 12 + reviewed.month + MONTHS_BETWEEN_CHECKS;
  const now = today.year * 12 + today.month;
  return now > due || (now === due && today.day > reviewed.day);
}

const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** `Tue 3 Mar` for `2026-03-03`: no order of day and month to mistake. */
export function dayWords(date: string): string {
  const at = new Date(`${date}T00:00:00Z`);
  if (!Number.isFinite(at.getTime())) return date;
  return `${DAYS[at.getUTCDay()]} ${at.getUTCDate()} ${MONTHS[at.getUTCMonth()]}`;
}

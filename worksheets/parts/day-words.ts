import * as say from '#words/parts/day-words.ts';

const DAYS = [say.sun, say.mon, say.tue, say.wed, say.thu, say.fri, say.sat];
const MONTHS = [
  say.jan,
  say.feb,
  say.mar,
  say.apr,
  say.may,
  say.jun,
  say.jul,
  say.aug,
  say.sep,
  say.oct,
  say.nov,
  say.dec,
];

/** `Tue 3 Mar` for `2026-03-03`: no order of day and month to mistake. */
export function dayWords(date: string): string {
  const at = new Date(`${date}T00:00:00Z`);
  if (!Number.isFinite(at.getTime())) return date;
  return `${DAYS[at.getUTCDay()]} ${at.getUTCDate()} ${MONTHS[at.getUTCMonth()]}`;
}

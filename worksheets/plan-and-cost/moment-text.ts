import { dayWords } from '../parts/clock-text.ts';

/** A moment of the plan as it is said: `Tue 3 Mar, 14:15`; a dash while it is not known. */
export function momentText(stamp: string | null): string {
  if (stamp === null) return '–';
  const [date = '', clock = ''] = stamp.split('T');
  return `${dayWords(date)}, ${clock.slice(0, 5)}`;
}

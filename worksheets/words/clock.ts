import type { ClockProblem } from '../parts/clock-text.ts';

/** What to say when a typed time of day cannot be taken. */
export function clockProblemWords(problem: ClockProblem, typed: string): string {
  switch (problem) {
    case 'blank':
      return 'Write the time.';
    case 'not-a-clock':
      return `"${typed}" is not a time of day. Write it as 14:15 or 1415.`;
    case 'foreign-digits':
      return `"${typed}" uses other digits. Write it with the digits 0 to 9.`;
    case 'not-a-date':
      return 'Choose the day.';
    case 'no-such-time':
      return `The clocks were put forward over ${typed}: that day has no such time.`;
  }
}

import type { Slot } from '../slot.ts';

export const timeOfReading = (clock: string) => `Time of reading ${clock}`;
export const coreAt = (clock: string) => `Core at ${clock}`;
export const countsAs = (corrected: string) => `counts as ${corrected}`;
export const initialsAt = (clock: string) => `Initials at ${clock}`;
export const excluded = 'EXCLUDED';
export const on = (date: string, clock: string) => ` on ${date}, ${clock}`;
export const by = (strong: Slot, initials: string, date: string, reason: string): Slot => [
  strong,
  ' by ',
  initials,
  date,
  ': ',
  reason,
];
export const countTheReadingOfAgain = (clock: string) => `Count the reading of ${clock} again`;
export const countItAgain = 'Count it again';
export const ofTheReadingOf = (clock: string) => `of the reading of ${clock}`;
export const excludeOrChangeTheDay = (span: Slot): Slot => ['Exclude, or change the day', span];
export const timeAndDayOfTheReading = 'Time and day of the reading';
export const whyItDoesNotShowThe = 'Why it does not show the core';
export const writeWhyWithoutReasonStays = 'Write why: without a reason it stays in the count.';
export const initials = 'Initials';
export const writeWhoSaysSo = 'Write who says so.';
export const excludeIt = 'Exclude it';
export const noInitials = '(no initials)';
export const noReason = '(no reason)';

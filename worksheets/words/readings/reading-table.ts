export const earlierReadingsCookCookLog = (before: number) =>
  `${before} earlier readings of the cook are on the cook log.`;
export const earlier = 'Earlier';
export const readingsToOf = (page: number, page2: number, length: number) =>
  `Readings ${page} to ${page2} of ${length}`;
export const later = 'Later';
export const n1Reading = '1 reading';
export const readings = (length: number) => `${length} readings`;
export const timeDay = 'Time, day';
export const core = 'Core';
export const initials = 'Initials';
export const saidAboutIt = 'Said about it';

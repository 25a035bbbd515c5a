export const noReadingYet = 'No reading yet.';
export const newestReadings = 'Newest readings';
export const excluded = ' excluded';
export const blank = 'blank';

export const to = (logName: string) => ` to ${logName}`;
export const addedAt = (logName: string, temperature: string, unit: string) =>
  `Added${logName}: ${temperature} °${unit} at `;
export const addAReading = 'Add a reading';
export const core = 'Core';
export const writeWhatTheProbeShows = 'Write what the probe shows.';
export const initials = 'Initials';
export const addReading = 'Add reading';
export const readOnAnotherDay = 'Read on another day';
export const dayReadingBlankLastTimeClock = 'Day of the reading (blank: the last time the clock showed it)';
export const time = 'Time';
export const blankNow = 'Blank: now';
export const now = 'now';

export const scale = 'Scale';
export const asTheLogSays = 'As the log says';
export const dayOfTheFirstReading = 'Day of the first reading';
export const neededWhereLogHasClockTimes =
  'Needed where the log has clock times only. Past midnight is found by itself.';
export const times = 'Times';
export const timeOfDay = 'Time of day';
export const timeSinceTheStart = 'Time since the start';
export const theLogWasStarted = 'The log was started';
export const countedIn = 'Counted in';
export const asTheHeadingSaysElseMinutes = 'As the heading says, else minutes';
export const seconds = 'seconds';
export const minutes = 'minutes';
export const hours = 'hours';
export const inADateSuchAs4 = 'In a date such as 4/3';
export const notSaid = 'Not said';
export const theDayComesFirst4March = 'the day comes first (4 March)';
export const theMonthComesFirstApril3 = 'the month comes first (April 3)';

export const datesAndTimesAsTheyStand = 'dates and times as they stand there';
export const timesOfDayFromTheDay = 'times of day, from the day you chose';
export const timeSinceTheStart = 'time since the start';
export const on = (clock: string, date: string) => `${clock} on ${date}`;
export const and = ' and ';
export const understood = 'Understood:';
export const fromTo = (fromIso: string, toIso: string, minutes: string) =>
  `, from ${fromIso} to ${toIso} (${minutes})`;
export const coreFromTheColumn = (heading: string) => ` Core from the column "${heading}".`;
export const withoutTemperatureCanRead = (unread: number) =>
  ` ${unread} without a temperature that can be read.`;
export const readingsInTimes = (
  length: number,
  fromIso: string,
  units: string,
  times: string,
  heading: string,
  unread: string,
) => `${length} readings${fromIso}, in ${units}. Times: ${times}.${heading}${unread}`;
export const firstAndLastReadings = 'First and last readings';
export const line = 'Line';
export const time = 'Time';
export const core = 'Core';
export const blank = 'blank';
export const takeTheseReadingsInto = (length: number, logName: string) =>
  `Take these ${length} readings into ${logName}`;

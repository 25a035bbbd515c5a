import { plural } from '../plural.ts';

export const linesLeftOutNoTimeTo = (count: number) =>
  `${count} ${plural(count, { one: 'line', other: 'lines' })} left out: no time to be read`;
export const keptWithoutATemperature = (count: number) => `${count} kept without a temperature`;
export const keptTemperatureCannotRead = (count: number) =>
  `${count} kept with a temperature that cannot be read`;
export const timesTheClockWentBack = (count: number) => `${count} times the clock went back`;
export const moreRemarks = (length: number) => `${length} more remarks`;
export const moreSameKindsMendFileFirst = (length: number) =>
  `and ${length} more of the same kinds. Mend the file first.`;

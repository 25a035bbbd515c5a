export const writtenLateTypedAfterReading = (date: string, clock: string, lateMin: string) =>
  `Written late: typed ${date}, ${clock}, ${lateMin} after the reading.`;

/** The plan beside the log, as it stood. */
export const planned = (parts: string) => `As planned, no proof: ${parts}.`;
export const coreAt = (target: string, time: string, band: string) =>
  `core at ${target} after ${time} (${band})`;
export const coreNever = (target: string) => `core never at ${target}`;
export const outAfter = (time: string, band: string) => `out after ${time} (${band})`;
export const peakOf = (peak: string, from: string, to: string) => `peak ${peak} (${from} to ${to})`;
export const told = (date: string, clock: string) => `told ${date} ${clock}`;
export const changedSince = 'THE PLAN WAS CHANGED SINCE';
export const read = (target: string, time: string) => `first read at ${target} after ${time}`;
export const notRead = (target: string) => `${target} not read`;

import type { Kitchen } from './kitchen.ts';

/** Rows of the file, then those of this device that it does not know. */
function joined<Row extends { id: string }>(here: readonly Row[], incoming: readonly Row[]): Row[] {
  const known = new Set(incoming.map(({ id }) => id));
  return [...incoming, ...here.filter(({ id }) => !known.has(id))];
}

/** Settings out of a file in place of those of this device. A scale or thermometer that only this device knows stays. */
export function mergeKitchen(here: Kitchen, incoming: Kitchen): Kitchen {
  return {
    ...incoming,
    scales: joined(here.scales, incoming.scales),
    thermometers: joined(here.thermometers, incoming.thermometers),
  };
}

export const asItGoesIn = 'as it goes in';
export const at = (timeMin: string, name: string) => `at ${timeMin}, ${name}`;
export const theCutNotYetComputed = 'The cut: not yet computed';
export const staleThePlanHasChanged = 'STALE: the plan has changed.';
export const mixAloneLiningWallNotDrawn = (model: string) =>
  `${model} The mix alone: lining and wall are not drawn.`;
export const theSameAsATable = 'The same as a table';
export const temperatureInC = (when: string) => `Temperature in °C ${when}`;
export const height = 'Height';
export const lookAtTheMoment = 'Look at the moment';
export const goesIn = 'Goes in';
export const outOfTheHeat = 'Out of the heat';
export const coreAtItsPeak = 'Core at its peak';

export const typeTheTemperatureOfTheLean = 'Type the temperature of the lean. ';
export const reckonTheMinutesInTheFreezer = 'Reckon the minutes in the freezer';
export const reckoning = 'Reckoning …';
export const sameRunHeatEngineCarriedWhat = (temper: string) =>
  `The same run of the heat engine, carried on. ${temper} What counts as stiff: common practice, no source.`;
export const notWithinMin = (longestMin: number) => `not within ${longestMin} min`;
export const firmAtTheEdgeFrom = 'Firm at the edge, from';
export const filmStillFreezerWMK = (temper: string, stillFreezerFilmWm2k: number) =>
  `${temper} Film of a still freezer ${stillFreezerFilmWm2k} W/(m²·K), and what counts as firm: common practice, no source. Usual for 25 mm cubes: 15 to 20 minutes, common practice, no source.`;
export const itsMiddleIsThenAt = (coreAtFirmC: string) => `Its middle is then at ${coreAtFirmC}.`;
export const tooStiffOutBy = 'Too stiff, out by';
export const solid = 'Solid';

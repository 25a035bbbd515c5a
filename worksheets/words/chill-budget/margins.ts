export const roundedDownDerivedFilmRoomAir = (margin: string) =>
  `${margin} Rounded down. Derived; the film of room air is a usual range, its quick end taken.`;
export const meatMayLieRoomBeforeGrinding = 'Meat may lie in the room before grinding';
export const theFinishedMixMayLieIn = 'The finished mix may lie in the room';
export const bindFoodSafetyMayGiveLess =
  'For the bind. Food safety may give you less: keep to your own rule for food out of the cold.';

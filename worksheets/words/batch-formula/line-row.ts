export const line = (place: number) => `line ${place}`;
export const weight = 'Weight';
export const ofAll = 'of all';
export const ofMeat = 'of meat';

export const ovenRecords = 'Oven records';
export const undo = 'Undo';
export const learntFilmsPanHeatingCHotter = (
  at: string,
  filmFactor: string,
  heatingFactor: string,
  mediumShiftC: string,
) =>
  `: learnt ${at}; films × ${filmFactor}, pan heating × ${heatingFactor}, ${mediumShiftC} °C hotter than it shows.`;
export const newNameFor = (name: string) => `New name for ${name}`;
export const rename = 'Rename';
export const deleteTheRecordOf = (name: string) => `Delete the record of ${name}`;
export const deleteWord = 'Delete';

export const benchCopy = 'bench copy';
export const recordCopy = 'record copy';
export const theSheetsAsTheyPrint = 'The sheets as they print';

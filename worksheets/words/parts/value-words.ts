export const takenAway = 'taken away';
export const aRow = 'a row';
export const rows = (length: number) => `${length} rows`;
export const blank = 'blank';
export const changed = 'changed';

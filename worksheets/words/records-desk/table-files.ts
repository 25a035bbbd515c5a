export const asATableForASpreadsheet = 'As a table, for a spreadsheet';
export const decimalsInTheTable = 'Decimals in the table';
export const n125ColumnsPartedByCommas = '12.5, columns parted by commas';
export const n125ColumnsPartedBySemicolons = '12,5, columns parted by semicolons';
export const formulaLines = (length: number) => `Formula, ${length} lines`;
export const readingsOfThem = (readings: number) => `Readings, ${readings} of them`;

/** A table kept as text: one line of column names and one a row, cells parted by `|`. */
export interface TextTable {
  readonly about: string;
  readonly columns: string;
  readonly rows: readonly string[];
}

/** Rows as records by column name. A row of another width is a broken file, hence thrown. */
export function readTable(table: TextTable): Record<string, string>[] {
  const columns = table.columns.split('|');
  return table.rows.map((row) => {
    const cells = row.split('|');
    if (cells.length !== columns.length) throw new Error(`Row of ${cells.length} cells: ${row}`);
    return Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? '']));
  });
}

/** A number cell; a blank is null, never zero. */
export function numberCell(cell: string | undefined): number | null {
  return cell === undefined || cell === '' ? null : Number(cell);
}

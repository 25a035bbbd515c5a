import { PARASITE_TABLES, type ParasiteRow } from '@larderwright/calc/lethality';
import { column, limitCell, printedCell, type TablePart, type TempCell } from '../../lib/table-model.ts';

/** Cold must be at least as deep, heat at least as high: each rounds to its own side. */
function temp({ tempC, tempF }: ParasiteRow): TempCell {
  if (tempF !== undefined) return printedCell(tempC, tempF);
  return limitCell(tempC, tempC < 0 ? 'maximum' : 'minimum');
}

/** Heat and cold against parasites, as calc carries them. */
export const parasites: readonly TablePart[] = PARASITE_TABLES.map((table) => {
  const byPiece = table.rows.some(({ thickness }) => thickness !== undefined);
  return {
    id: table.id,
    title: table.title,
    notes: [table.note],
    sources: [table.source],
    columns: [column('Temperature'), column('Time'), ...(byPiece ? [column('Piece')] : [])],
    rows: table.rows.map((row, at) => ({
      id: `${table.id}-${at + 1}`,
      cells: [temp(row), row.time, ...(byPiece ? [row.thickness ?? '–'] : [])],
      mark: table.mark,
    })),
  };
});

import { formatLimitTemp, type LimitSide } from '@larderwright/calc/quantities';
import type { Mark } from '@larderwright/calc/sources';
import { figureParts } from '../../content/figures/figure-text.ts';
import { FIGURES, type FigureId } from '../../content/figures/index.ts';
import type { Anchor } from './table-anchor.ts';

/** A temperature on both scales, so that a reader may ask for one. */
export interface TempCell {
  readonly celsius: string;
  readonly fahrenheit: string;
}

export type Cell = string | TempCell;

export interface TableColumn {
  readonly label: string;
  /** Set with the numbers under each other. */
  readonly number?: boolean;
}

/** One row. The first cell names it. */
export interface TableRow {
  /** Unique on the page. */
  readonly id: string;
  readonly cells: readonly Cell[];
  readonly mark: Mark;
  /** Where the first cell leads. */
  readonly href?: string;
  /** More words the row is searched by. */
  readonly words?: readonly string[];
}

/** One part of a table page, and one card on the wall: rows that share columns and sources. */
export interface TablePart {
  readonly id: string;
  readonly title: string;
  readonly notes: readonly string[];
  readonly sources: readonly string[];
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
}

export const column = (label: string): TableColumn => ({ label });
export const numberColumn = (label: string): TableColumn => ({ label, number: true });

/** A figure of calc that has a safe side, °F beside it rounded to that side. */
export function limitCell(tempC: number, side: LimitSide): TempCell {
  return cellOf(formatLimitTemp({ value: tempC, unit: 'C' }, side));
}

/** A pair that a source prints on both scales. */
export function printedCell(tempC: number, tempF: number): TempCell {
  return cellOf(formatLimitTemp({ value: tempF, unit: 'F', published: tempC }, 'minimum'));
}

/** A temperature or a range with no safe side, °F to the nearest degree. */
export function plainCell(value: number | readonly [number, number]): TempCell {
  const { amount, beside } = figureParts({ value, unit: 'C', mark: 'derived' });
  return { celsius: amount, fahrenheit: beside };
}

/** A figure of the register, with the words that say which side of it is meant. */
export function figureCell(id: FigureId): Cell {
  const { lead, amount, beside, tail } = figureParts(FIGURES[id]);
  const around = (middle: string) => [lead, middle, tail].filter((part) => part !== '').join(' ');
  return beside ? { celsius: around(amount), fahrenheit: around(beside) } : around(amount);
}

/** A cell as one string, for search. */
export function cellText(cell: Cell): string {
  return typeof cell === 'string' ? cell : `${cell.celsius} (${cell.fahrenheit})`;
}

/** A row in words: what each cell says, under the name of its column where it needs one. */
function rowWords(part: TablePart, row: TableRow): string[] {
  return [
    ...row.cells.slice(1).flatMap((cell, at) => {
      const text = cellText(cell);
      const label = part.columns[at + 1]?.label ?? '';
      return text === '' || text === '–' ? [] : [`${label}: ${text}`];
    }),
    ...(row.words ?? []),
  ];
}

/** Every place of a part that can be linked and searched: the part itself, then its rows. */
export function partAnchors(part: TablePart): Anchor[] {
  return [
    { id: part.id, label: part.title, words: part.notes, isRow: false },
    ...part.rows.map((row) => ({
      id: row.id,
      label: cellText(row.cells[0] ?? ''),
      words: [...rowWords(part, row), part.title],
      isRow: true,
    })),
  ];
}

function cellOf({ celsius, fahrenheit }: { celsius: string; fahrenheit: string }): TempCell {
  return { celsius, fahrenheit };
}

import { plainText } from '../quantities/index.ts';

/** A cell: a number stays one for the spreadsheet; null is blank. */
export type Cell = string | number | null;

/** Which decimal the spreadsheet of the reader expects. With a comma, columns are parted by semicolons. */
export type DecimalMark = 'point' | 'comma';

/** So that a spreadsheet reads the letters as UTF-8. */
const BYTE_ORDER_MARK = '\uFEFF';
/** A spreadsheet takes a cell that begins so for a formula, wide forms of the signs too. */
const FORMULA_HEAD = /^[\s\u00A0\uFEFF]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;
const PLAIN_NUMBER = /^-?\d+(?:[.,]\d+)?$/;
/** Noise of binary arithmetic lies beyond. */
const TRUSTED_DIGITS = 12;

function numberText(value: number, mark: DecimalMark): string {
  if (!Number.isFinite(value)) return '';
  const text = plainText(Number(value.toPrecision(TRUSTED_DIGITS))).replace('−', '-');
  return mark === 'comma' ? text.replace('.', ',') : text;
}

function cellText(cell: Cell, mark: DecimalMark): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return numberText(cell, mark);
  // The apostrophe makes it text to a spreadsheet, and a person sees what stood there.
  const text = FORMULA_HEAD.test(cell) && !PLAIN_NUMBER.test(cell) ? `'${cell}` : cell;
  return /[",;\t\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Rows as the text of a CSV file: RFC 4180 (lines end in CR LF, quotes doubled), with a byte order mark. Text that a
 * spreadsheet would run as a formula is marked as text.
 */
export function csvText(rows: readonly (readonly Cell[])[], mark: DecimalMark): string {
  const separator = mark === 'comma' ? ';' : ',';
  const lines = rows.map((row) => row.map((cell) => cellText(cell, mark)).join(separator));
  return `${BYTE_ORDER_MARK}${lines.map((line) => `${line}\r\n`).join('')}`;
}

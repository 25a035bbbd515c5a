/** Ways columns may be parted, in the order they are tried. A single space last, for it also stands inside times. */
export const SEPARATORS = ['\t', ';', ',', '|', ' '] as const;
export type Separator = (typeof SEPARATORS)[number];

/** A date, a clock or both at the head of a line parted by spaces. */
const TIME_HEAD =
  /^(?:\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}[T ]\s*)?\d{1,4}[:h]\d{2}(?::\d{2}(?:[.,]\d+)?)?(?:\s?[ap]\.?m\.?)?(?:Z|[+-]\d{2}:?\d{2})?(?=\s|$)/i;
const UNIT_TAIL = /\s+(?=[°º]?[CF]\b)/gi;

/** One line of a spreadsheet file: cells in double quotes may hold the separator and doubled quotes. */
function quotedCells(line: string, separator: Separator): string[] {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let index = 0; index < line.length; index++) {
    const char = line.charAt(index);
    if (char === '"') {
      const doubled = quoted && line.charAt(index + 1) === '"';
      if (doubled) {
        cell += '"';
        index++;
      } else quoted = !quoted;
    } else if (char === separator && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += char;
  }
  return [...cells, cell.trim()];
}

function spacedCells(line: string): string[] {
  const whole = line.trim();
  const head = TIME_HEAD.exec(whole)?.[0];
  const rest = (head === undefined ? whole : whole.slice(head.length).trim()).replaceAll(UNIT_TAIL, '');
  const tail = rest === '' ? [] : rest.split(/\s+/);
  return head === undefined ? tail : [head, ...tail];
}

/** Cut one line into trimmed cells. */
export function cellsOf(line: string, separator: Separator): string[] {
  if (separator === ' ') return spacedCells(line);
  return line.includes('"') ? quotedCells(line, separator) : line.split(separator).map((cell) => cell.trim());
}

import type { ComponentChildren } from 'preact';

/** One row: what it is about, then a figure for each further column. */
export interface FigureRow {
  key: string;
  head: ComponentChildren;
  cells: readonly ComponentChildren[];
}

interface FigureTableProps {
  caption?: string;
  /** The first heads the row heads, the others the figures. */
  columns: readonly string[];
  rows: readonly FigureRow[];
  foot?: FigureRow;
  /** Figures are words: set them to the start of their column. */
  words?: boolean;
}

/**
 * A table of figures that stacks on a phone: there each figure stands under its row's head with its own name.
 */
export function FigureTable({ caption, columns, rows, foot, words = false }: FigureTableProps) {
  const [first = '', ...named] = columns;
  const side = words ? undefined : 'n';
  const line = ({ key, head, cells }: FigureRow) => (
    <tr key={key}>
      <th scope="row">{head}</th>
      {named.map((name, index) => (
        <td key={name} class={side} data-name={name}>
          {cells[index]}
        </td>
      ))}
    </tr>
  );
  return (
    <table class="figures">
      {caption === undefined ? null : <caption>{caption}</caption>}
      <thead>
        <tr>
          <th scope="col">{first}</th>
          {named.map((name) => (
            <th key={name} scope="col" class={side}>
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>{rows.map(line)}</tbody>
      {foot ? <tfoot>{line(foot)}</tfoot> : null}
    </table>
  );
}

import type { Filled, SheetVerdict } from '../batch-sheet/sheet-model.ts';
import { SheetVerdicts } from '../batch-sheet/sheet-verdict.tsx';
import { Block, Cell, WriteIn } from '../batch-sheet/write-in.tsx';

/** A labelled box of a card; without a value it is empty, with its unit, for a pencil. */
export interface CardBox {
  readonly label: string;
  readonly value?: Filled | string | null | undefined;
  readonly unit?: string;
  readonly wide?: boolean;
  readonly broad?: boolean;
}

/** A ruled table of a card. A null cell is for a pencil. */
export interface CardTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (Filled | string | null)[])[];
  /** Empty rows under those. */
  readonly blankRows?: number;
  /** The first columns hold names and are broad; the others are narrow boxes. */
  readonly firstIsName?: boolean;
  /** A table with columns of a width of their own. */
  readonly kind?: 'times';
}

/** One numbered block of a card. What it has is set in this order. */
export interface CardBlock {
  readonly title: string;
  /** The dangerous weight stands in a heavy frame. */
  readonly heavy?: boolean;
  readonly rows?: readonly (readonly CardBox[])[];
  readonly table?: CardTable;
  readonly lines?: readonly string[];
  readonly verdicts?: readonly SheetVerdict[];
  /** Boxes to tick or initial, each with its text in the corner. */
  readonly ticks?: readonly string[];
  /** An empty place to draw on, with what to draw. */
  readonly place?: string;
}

/** The blocks of a card, numbered as they stand. */
export function CardBlocks({ blocks }: { blocks: readonly CardBlock[] }) {
  return (
    <>
      {blocks.map((block, index) => (
        <Block
          key={block.title}
          no={index + 1}
          title={block.title}
          heavy={block.heavy ?? false}
          stacked={block.heavy !== true}
        >
          {block.rows?.map((row, place) => (
            <div class="write-row" key={`${place}-${row[0]?.label}`}>
              {row.map((box) => (
                <WriteIn key={box.label} {...box} />
              ))}
            </div>
          ))}
          {block.table ? <RuledTable table={block.table} /> : null}
          {block.lines?.map((line) => (
            <p class="rule-line" key={line}>
              {line}
            </p>
          ))}
          {block.verdicts && block.verdicts.length > 0 ? <SheetVerdicts verdicts={block.verdicts} /> : null}
          {block.ticks ? (
            <div class="tick-boxes">
              {block.ticks.map((text, place) => (
                <span class="tick-box" key={`${place}-${text}`}>
                  {text}
                </span>
              ))}
            </div>
          ) : null}
          {block.place ? <p class="draw-place">{block.place}</p> : null}
        </Block>
      ))}
    </>
  );
}

function RuledTable({ table }: { table: CardTable }) {
  const blank = Array.from({ length: table.blankRows ?? 0 }, () => table.columns.map(() => null));
  return (
    <table class={table.firstIsName ? 'sheet-table names-first' : 'sheet-table'} data-kind={table.kind}>
      <thead>
        <tr>
          {table.columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {[...table.rows, ...blank].map((row, place) => (
          <tr key={`row-${place + 1}`}>
            {table.columns.map((column, index) => {
              const cell = row[index] ?? null;
              return <td key={column}>{typeof cell === 'string' ? cell : <Cell value={cell} />}</td>;
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

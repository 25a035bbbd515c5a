import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { CLEANING_WORDS, THERMOMETER_LOG_WORDS } from '../words/forms.ts';

/** Rows a kitchen adds for its own tools. */
const OWN_TOOLS = 3;
/** Rows of the thermometer record on one page, those already written included. */
const CHECK_ROWS = 27;

/** One week of cleaning. The record keeps nothing of it: only the kitchen's name can be filled in. */
export function cleaningBlocks(kitchen: string | null): CardBlock[] {
  const { columns, items, lines, checks, wrong } = CLEANING_WORDS;
  return [
    {
      title: 'Where and when',
      rows: [
        [
          { label: 'Kitchen', value: kitchen, wide: true },
          { label: 'Week from' },
          { label: 'Detergent', wide: true },
          { label: 'Sanitiser', wide: true },
        ],
      ],
    },
    {
      title: 'What is cleaned: initials each day',
      table: {
        columns,
        rows: items.map((item) => [item, ...columns.slice(1).map(() => null)]),
        blankRows: OWN_TOOLS,
        firstIsName: true,
      },
      lines,
    },
    {
      title: checks,
      rows: [
        [
          { label: 'Test strip of sanitiser', unit: 'ppm' },
          { label: 'Looked over by', wide: true },
          { label: 'Swab or test kit, result', wide: true },
          { label: 'Checked by, day', wide: true },
        ],
        [{ label: wrong, broad: true }],
        [{ label: 'Who, when', broad: true }],
      ],
    },
  ];
}

/** One check that stands on the record already, in the order of the columns. */
export type CheckRow = readonly (Filled | string | null)[];

/**
 * Checks of all thermometers, many weeks on one page.
 *
 * @param boils where water boils here, as it prints
 */
export function thermometerLogBlocks(
  kitchen: string | null,
  boils: string | null,
  rows: readonly CheckRow[],
): CardBlock[] {
  const { columns, lines } = THERMOMETER_LOG_WORDS;
  return [
    {
      title: 'Where and when',
      rows: [
        [
          { label: 'Kitchen', value: kitchen, wide: true },
          { label: 'Water boils here at', value: boils, unit: '°C' },
          { label: 'May be off, ±', unit: '°C' },
          { label: 'From – to', wide: true },
        ],
      ],
    },
    {
      title: 'Checks',
      table: { columns, rows, blankRows: Math.max(4, CHECK_ROWS - rows.length) },
      lines,
    },
  ];
}

import * as say from '#words/forms/kitchen-blocks.ts';
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
      title: say.whereAndWhen,
      rows: [
        [
          { label: say.kitchen, value: kitchen, wide: true },
          { label: say.weekFrom },
          { label: say.detergent, wide: true },
          { label: say.sanitiser, wide: true },
        ],
      ],
    },
    {
      title: say.whatIsCleanedInitialsEachDay,
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
          { label: say.testStripOfSanitiser, unit: 'ppm' },
          { label: say.lookedOverBy, wide: true },
          { label: say.swabOrTestKitResult, wide: true },
          { label: say.checkedByDay, wide: true },
        ],
        [{ label: wrong, broad: true }],
        [{ label: say.whoWhen, broad: true }],
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
      title: say.whereAndWhen,
      rows: [
        [
          { label: say.kitchen, value: kitchen, wide: true },
          { label: say.waterBoilsHereAt, value: boils, unit: '°C' },
          { label: say.mayBeOff, unit: '°C' },
          { label: say.fromTo, wide: true },
        ],
      ],
    },
    {
      title: say.checks,
      table: { columns, rows, blankRows: Math.max(4, CHECK_ROWS - rows.length) },
      lines,
    },
  ];
}

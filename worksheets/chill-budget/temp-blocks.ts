import type { Batch } from '@larderwright/calc/batch';
import { type ChillBudgetSlice, type ChillBudgetValues, PASS_STOP_C } from '@larderwright/calc/chill-budget';
import { fixedText, formatLimitTemp } from '@larderwright/calc/quantities';
import { filled, percent, words } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { FAT_HEAT_NAMES, LOT_KIND_NAMES } from '../words/chill-budget-names.ts';
import { lotName, passName } from './names.ts';
import { minutesText, tempText } from './temp-text.ts';

const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });
const temp = (tempC: number | null, rounding: 'up' | 'down') =>
  made(tempC === null ? null : tempText(tempC, rounding));

/** What the card says to stop at. */
const STOP_LINE = `Stop when a pass reads above ${formatLimitTemp({ value: PASS_STOP_C, unit: 'C' }, 'maximum').text}: chill meat and machine, then go on. Common practice, no source.`;

/** Blocks of the card by the grinder. What is not known is a box to write in. */
export function tempBlocks(batch: Batch, slice: ChillBudgetSlice, values: ChillBudgetValues): CardBlock[] {
  const margin = (min: number | null) => made(min === null ? null : minutesText(min));
  const passOf = (id: string | null) => {
    const place = slice.passes.findIndex((pass) => pass.id === id);
    const pass = slice.passes[place];
    return pass
      ? { name: passName(pass, place), rise: filled('temperature-difference', pass.rise, 'dC') }
      : null;
  };
  return [
    {
      title: 'What goes in',
      rows: [
        [
          { label: 'Product', value: words(batch.product.name), wide: true },
          { label: 'Kitchen', value: words(batch.product.kitchen), wide: true },
          { label: 'Ground by' },
          { label: 'Date', unit: 'date' },
        ],
      ],
      table: {
        columns: ['What', 'Kind', 'Weight', 'Fat', 'Wanted at', 'Goes in', 'Reads °C', 'Clock'],
        rows: slice.lots.map((lot) => [
          lotName(lot),
          LOT_KIND_NAMES[lot.kind],
          filled('mass', lot.mass, lot.mass.unit),
          lot.kind === 'mixed' ? filled('fraction', lot.fat, '%') : '–',
          filled('temperature', lot.temp, lot.temp.unit),
          passOf(lot.beforePassId)?.name.replace('Pass', 'before pass') ?? 'at the start',
          null,
          null,
        ]),
        blankRows: 1,
      },
    },
    {
      title: 'STOP LINE, and what each step reads',
      heavy: true,
      table: {
        columns: ['Step', 'Warms by', 'Should read', 'Reads °C', 'Clock', 'Initials'],
        rows: values.steps.map((step) => {
          const pass = passOf(step.passId);
          return [
            pass?.name ?? 'Brought together',
            pass ? pass.rise : '–',
            temp(step.tempC, 'up'),
            null,
            null,
            null,
          ];
        }),
        blankRows: 1,
      },
      lines: [STOP_LINE],
    },
    {
      title: 'The end, ice, and time',
      rows: [
        [
          {
            label: 'Warmest it may end',
            value: filled('temperature', slice.limit, slice.limit.unit) ?? temp(values.limitC, 'down'),
            unit: '°C',
          },
          { label: 'Worked out to end at', value: temp(values.endC, 'up'), unit: '°C' },
          {
            label: 'Heat of the fat',
            value: FAT_HEAT_NAMES[slice.fatHeat].split(':')[0] ?? null,
            wide: true,
          },
        ],
        [
          { label: 'Ice at', value: filled('temperature', slice.iceTemp, slice.iceTemp.unit), unit: '°C' },
          { label: 'Water allowed as ice', value: filled('mass', slice.liquidAllowance, 'g'), unit: 'g' },
          {
            label: 'Ice to add',
            value: made(values.iceNeededG === null ? null : `${fixedText(values.iceNeededG, 0, 'up')} g`),
            unit: 'g',
          },
          { label: 'of the mix', value: made(percent(values.iceNeededFraction, 1)), unit: '%' },
          { label: 'Ice added', unit: 'g' },
        ],
        [
          { label: 'or start all meat at', value: temp(values.preChillC, 'down'), unit: '°C' },
          { label: 'Room', value: filled('temperature', slice.room, slice.room.unit), unit: '°C' },
          { label: 'Lies thick', value: filled('length', slice.layer, 'mm'), unit: 'mm' },
          { label: 'Before grinding', value: margin(values.marginBeforeMin), unit: 'min' },
          { label: 'Finished mix', value: margin(values.marginAfterMin), unit: 'min' },
        ],
        [
          { label: 'Cubes', value: filled('length', slice.cube, 'mm'), unit: 'mm' },
          { label: 'Freezer', value: filled('temperature', slice.freezer, slice.freezer.unit), unit: '°C' },
          { label: 'Into the freezer at', unit: 'clock' },
          { label: 'Firm and out at', unit: 'clock' },
        ],
      ],
      lines: [
        'Cubes of 25 mm: 15 to 20 min as a rule, firm at the edge, not solid. Common practice, no source.',
      ],
    },
  ];
}

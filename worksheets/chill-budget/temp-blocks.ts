import type { Batch } from '@larderwright/calc/batch';
import { type ChillBudgetSlice, type ChillBudgetValues, PASS_STOP_C } from '@larderwright/calc/chill-budget';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/chill-budget/temp-blocks.ts';
import { filled, percent, words } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { FAT_HEAT_NAMES, LOT_KIND_NAMES, PASS_KIND_NAMES } from '../words/chill-budget-names.ts';
import { limitTemp } from '../words/limit-temp.ts';
import { lotName, passName } from './names.ts';
import { minutesText, tempText } from './temp-text.ts';

const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });
const temp = (tempC: number | null, rounding: 'up' | 'down') =>
  made(tempC === null ? null : tempText(tempC, rounding));

/** What the card says to stop at. */
const STOP_LINE = say.stopWhenPassReadsAboveChill(
  limitTemp({ value: PASS_STOP_C, unit: 'C' }, 'maximum').text,
);

/** Blocks of the card by the grinder. What is not known is a box to write in. */
export function tempBlocks(batch: Batch, slice: ChillBudgetSlice, values: ChillBudgetValues): CardBlock[] {
  const margin = (min: number | null) => made(min === null ? null : minutesText(min));
  const passOf = (id: string | null) => {
    const place = slice.passes.findIndex((pass) => pass.id === id);
    const pass = slice.passes[place];
    return pass
      ? {
          name: passName(pass, place),
          before: say.beforePass(place + 1, PASS_KIND_NAMES[pass.kind].toLowerCase()),
          rise: filled('temperature-difference', pass.rise, 'dC'),
        }
      : null;
  };
  return [
    {
      title: say.whatGoesIn,
      rows: [
        [
          { label: say.product, value: words(batch.product.name), wide: true },
          { label: say.kitchen, value: words(batch.product.kitchen), wide: true },
          { label: say.groundBy },
          { label: say.date, unit: say.date2 },
        ],
      ],
      table: {
        columns: [say.what, say.kind, say.weight, say.fat, say.wantedAt, say.goesIn, say.readsC, say.clock],
        rows: slice.lots.map((lot) => [
          lotName(lot),
          LOT_KIND_NAMES[lot.kind],
          filled('mass', lot.mass, lot.mass.unit),
          lot.kind === 'mixed' ? filled('fraction', lot.fat, '%') : '–',
          filled('temperature', lot.temp, lot.temp.unit),
          passOf(lot.beforePassId)?.before ?? say.atTheStart,
          null,
          null,
        ]),
        blankRows: 1,
      },
    },
    {
      title: say.stopLineAndWhatEachStep,
      heavy: true,
      table: {
        columns: [say.step, say.warmsBy, say.shouldRead, say.readsC, say.clock, say.initials],
        rows: values.steps.map((step) => {
          const pass = passOf(step.passId);
          return [
            pass?.name ?? say.broughtTogether,
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
      title: say.theEndIceAndTime,
      rows: [
        [
          {
            label: say.warmestItMayEnd,
            value: filled('temperature', slice.limit, slice.limit.unit) ?? temp(values.limitC, 'down'),
            unit: '°C',
          },
          { label: say.workedOutToEndAt, value: temp(values.endC, 'up'), unit: '°C' },
          {
            label: say.heatOfTheFat,
            value: FAT_HEAT_NAMES[slice.fatHeat].split(':')[0] ?? null,
            wide: true,
          },
        ],
        [
          { label: say.iceAt, value: filled('temperature', slice.iceTemp, slice.iceTemp.unit), unit: '°C' },
          { label: say.waterAllowedAsIce, value: filled('mass', slice.liquidAllowance, 'g'), unit: 'g' },
          {
            label: say.iceToAdd,
            value: made(values.iceNeededG === null ? null : `${fixedText(values.iceNeededG, 0, 'up')} g`),
            unit: 'g',
          },
          { label: say.ofTheMix, value: made(percent(values.iceNeededFraction, 1)), unit: '%' },
          { label: say.iceAdded, unit: 'g' },
        ],
        [
          { label: say.orStartAllMeatAt, value: temp(values.preChillC, 'down'), unit: '°C' },
          { label: say.room, value: filled('temperature', slice.room, slice.room.unit), unit: '°C' },
          { label: say.liesThick, value: filled('length', slice.layer, 'mm'), unit: 'mm' },
          { label: say.beforeGrinding, value: margin(values.marginBeforeMin), unit: 'min' },
          { label: say.finishedMix, value: margin(values.marginAfterMin), unit: 'min' },
        ],
        [
          { label: say.cubes, value: filled('length', slice.cube, 'mm'), unit: 'mm' },
          { label: say.freezer, value: filled('temperature', slice.freezer, slice.freezer.unit), unit: '°C' },
          { label: say.intoTheFreezerAt, unit: say.clock2 },
          { label: say.firmAndOutAt, unit: say.clock2 },
        ],
      ],
      lines: [say.cubes25Mm1520Min],
    },
  ];
}

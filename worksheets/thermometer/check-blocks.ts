import type { Batch } from '@larderwright/calc/batch';
import { type Entry, fixedText, unitLabel } from '@larderwright/calc/quantities';
import { filled, words } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import type { CheckFigures } from './check-figures.ts';
import { boilText, mustShowText, offsetText } from './figures.ts';

const made = (text: string | null) => (text === null ? null : ({ text, flag: 'W' } as const));

const HOLD_LINE =
  'A thermometer that fails is taken out of use, never used with a correction in the head. What was cooked since its last good check is on hold.';

/** A height as it was typed: it lies beyond what a length in a kitchen may be. */
function heightOf({ text, unit }: Entry) {
  return text.trim() === '' ? null : ({ text: `${text.trim()} ${unitLabel(unit)}`, flag: 'E' } as const);
}

/** The card of the check, as data. */
export function checkBlocks(
  batch: Batch,
  { slice, values, verdicts, limit, limitC, atLimit }: CheckFigures,
): CardBlock[] {
  const of = (id: string) => values.checked.find((checked) => checked.id === id);
  return [
    {
      title: 'Where the check is made',
      rows: [
        [
          { label: 'Kitchen', value: words(batch.product.kitchen), wide: true },
          { label: 'Height', value: heightOf(slice.altitude) },
          { label: 'Pressure here', value: filled('pressure', slice.pressure, slice.pressure.unit) },
          {
            label: 'Water boils at',
            value: made(values.boil ? boilText(values.boil.tempC) : null),
            unit: '°C',
          },
        ],
        [
          {
            label: 'May be off, ±',
            value: filled('temperature-difference', slice.tolerance, slice.tolerance.unit),
          },
          { label: 'A check is good for', value: filled('time', slice.goodFor, slice.goodFor.unit) },
          { label: 'Limit', value: limit ?? `${fixedText(limitC, 0)} °C, no limit named`, wide: true },
        ],
      ],
    },
    {
      title: 'Each thermometer',
      table: {
        columns: [
          'Name',
          'In ice',
          'In boil',
          'Step',
          'Error ±',
          'Off at the limit',
          'MUST SHOW',
          'Day, by',
          'Due',
        ],
        rows: slice.thermometers.map((thermometer) => {
          const { id, name, ice, boil, step, error, checkedOn, checkedBy } = thermometer;
          const here = atLimit.get(id);
          return [
            words(name),
            filled('temperature', ice, ice.unit),
            filled('temperature', boil, boil.unit),
            filled('temperature-difference', step, step.unit),
            filled('temperature-difference', error, error.unit),
            made(offsetText(here?.offsetC ?? null)),
            made(here?.mustShow ? mustShowText(here.mustShow) : null),
            words([checkedOn, checkedBy.trim()].filter(Boolean).join(', ')),
            made(of(id)?.dueOn ?? null),
          ];
        }),
        blankRows: 2,
      },
      verdicts: sheetVerdicts(verdicts),
      lines: [HOLD_LINE],
    },
  ];
}

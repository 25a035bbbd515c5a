import type { Batch } from '@larderwright/calc/batch';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/thermometer/check-blocks.ts';
import { filled, heightOf, words } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import type { CheckFigures } from './check-figures.ts';
import { boilText, mustShowText, offsetText } from './figures.ts';

const made = (text: string | null) => (text === null ? null : ({ text, flag: 'W' } as const));

/** The card of the check, as data. */
export function checkBlocks(
  batch: Batch,
  { slice, values, verdicts, limit, limitC, atLimit }: CheckFigures,
): CardBlock[] {
  const of = (id: string) => values.checked.find((checked) => checked.id === id);
  return [
    {
      title: say.whereTheCheckIsMade,
      rows: [
        [
          { label: say.kitchen, value: words(batch.product.kitchen), wide: true },
          { label: say.height, value: heightOf(slice.altitude) },
          { label: say.pressureHere, value: filled('pressure', slice.pressure, slice.pressure.unit) },
          {
            label: say.waterBoilsAt,
            value: made(values.boil ? boilText(values.boil.tempC) : null),
            unit: '°C',
          },
        ],
        [
          {
            label: say.mayBeOff,
            value: filled('temperature-difference', slice.tolerance, slice.tolerance.unit),
          },
          { label: say.aCheckIsGoodFor, value: filled('time', slice.goodFor, slice.goodFor.unit) },
          { label: say.limit, value: limit ?? say.cNoLimitNamed(fixedText(limitC, 0)), wide: true },
        ],
      ],
    },
    {
      title: say.eachThermometer,
      table: {
        columns: [
          say.name,
          say.inIce,
          say.inBoil,
          say.step,
          say.error,
          say.offAtTheLimit,
          say.mustShow,
          say.dayBy,
          say.due,
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
      lines: [say.holdLine],
    },
  ];
}

import type { Batch } from '@larderwright/calc/batch';
import type { BinderContext, BinderSlice, BinderValues } from '@larderwright/calc/binder';
import type { Verdict } from '@larderwright/calc/findings';
import type { Allergen } from '@larderwright/calc/ingredients';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/binder-and-garnish/prep-blocks.ts';
import { filled, percent, words, worked } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { PANADE_NAMES, PIECE_SHAPE_NAMES } from '../words/binder-names.ts';

const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });
const lengthMade = (mm: number | null) => made(mm === null ? null : `${fixedText(mm, 1)} mm`);
const listOf = (allergens: readonly Allergen[]) =>
  allergens.map(({ name }) => name).join(', ') || say.noneKnown;

/** Blocks of the list for preparing. What is not known is a box to write in. */
export function prepBlocks(
  batch: Batch,
  slice: BinderSlice,
  values: BinderValues,
  verdicts: readonly Verdict[],
  { mouldWidthMm, mouldHeightMm }: Pick<BinderContext, 'mouldWidthMm' | 'mouldHeightMm'>,
): CardBlock[] {
  const { panade, carried } = values;
  const hasPanade = slice.panadeKind !== 'none';
  const begun = hasPanade || slice.garnish.length + slice.extenders.length > 0;
  return [
    {
      title: say.forWhat,
      rows: [
        [
          { label: say.product, value: words(batch.product.name), wide: true },
          { label: say.kitchen, value: words(batch.product.kitchen), wide: true },
          {
            label: say.meat,
            value: filled('mass', slice.meat, 'g') ?? worked(values.meatG, true),
            unit: 'g',
          },
        ],
        [
          {
            label: say.mouldInsideWide,
            value: filled('length', slice.mouldWidth, 'mm') ?? lengthMade(mouldWidthMm),
            unit: 'mm',
          },
          {
            label: say.sliceHigh,
            value: filled('length', slice.mouldHeight, 'mm') ?? lengthMade(mouldHeightMm),
            unit: 'mm',
          },
          { label: say.sliceThick, value: filled('length', slice.sliceThickness, 'mm'), unit: 'mm' },
          { label: say.preparedBy },
          { label: say.date, unit: say.date2 },
        ],
      ],
    },
    {
      title: say.panade(hasPanade ? PANADE_NAMES[slice.panadeKind] : say.none),
      rows: [
        [
          { label: say.wantedOfTheMeat, value: filled('fraction', slice.panadeShare, '%'), unit: '%' },
          { label: say.lostAsSteam, value: filled('fraction', slice.panadeLoss, '%'), unit: '%' },
          { label: say.cookedWorkedOut, value: hasPanade ? worked(panade.cookedG, true) : null, unit: 'g' },
          { label: say.cookedWeighed, value: filled('mass', slice.panadeCooked, 'g'), unit: 'g' },
          {
            label: say.ofTheMeat,
            value: hasPanade ? made(percent(panade.shareFraction, 1)) : null,
            unit: '%',
          },
        ],
        [
          { label: say.onAThinTrayIntoThe, unit: say.clock },
          { label: say.cold4C39FOr, unit: say.clock },
          {
            label: say.atMixing,
            value: filled('temperature', slice.panadeTemp, slice.panadeTemp.unit),
            unit: '°C',
          },
        ],
      ],
      table: {
        columns: [say.part, say.weigh, say.saltByPack, say.waterByPack, say.scaleReadsG, say.lot],
        rows: slice.panadeParts.map(({ name, amount, salt, water }) => [
          name,
          filled('mass', amount, 'g'),
          filled('fraction', salt, '%'),
          filled('fraction', water, '%'),
          null,
          null,
        ]),
        blankRows: slice.panadeParts.length === 0 ? 3 : 0,
      },
    },
    {
      title: say.eggCreamOtherBinders,
      rows: [
        [
          { label: say.egg, value: filled('mass', slice.egg, 'g'), unit: 'g' },
          { label: say.cream35Fat, value: filled('mass', slice.cream, 'g'), unit: 'g' },
          {
            label: say.usSausageNameThatLimitsBinders,
            value: slice.usNamedSausage ? say.yes : say.no,
            wide: true,
          },
        ],
      ],
      table: {
        columns: [say.binder, say.weigh, say.saltByPack, say.waterByPack, say.scaleReadsG, say.lot],
        rows: slice.extenders.map(({ name, amount, salt, water }) => [
          name,
          filled('mass', amount, 'g'),
          filled('fraction', salt, '%'),
          filled('fraction', water, '%'),
          null,
          null,
        ]),
        blankRows: slice.extenders.length === 0 ? 1 : 0,
      },
      verdicts: sheetVerdicts(verdicts),
    },
    {
      title: say.garnish,
      table: {
        columns: [
          say.what,
          say.bought,
          say.left,
          say.ready,
          say.piece,
          say.inASlice,
          say.coldBy,
          say.readsG,
          say.lot,
        ],
        rows: slice.garnish.map((row) => {
          const mine = values.garnish.find(({ lineId }) => lineId === row.id);
          const state = [row.dried ? say.dried : '', row.rawAllium ? say.raw : ''].filter(Boolean).join(', ');
          return [
            `${row.name}${state ? ` (${state})` : ''}`,
            filled('mass', row.asBought, 'g') ?? worked(mine?.toBuyG ?? null, true),
            filled('fraction', row.prepYield, '%'),
            filled('mass', row.prepared, 'g') ?? worked(mine?.preparedG ?? null, true),
            pieceCell(row),
            mine?.pieces ? made(fixedText(mine.pieces.within, 1)) : null,
            null,
            null,
            null,
          ];
        }),
        blankRows: slice.garnish.length === 0 ? 5 : 1,
      },
      lines: slice.garnish.flatMap(({ name, density, salt, water, laidCount }) => {
        const said = [
          ['density', filled('density', density, 'g/mL')],
          [say.saltByPack2, filled('fraction', salt, '%')],
          ['water', filled('fraction', water, '%')],
          [say.stripsLaidAlong, filled('count', laidCount, 'count', false)],
        ] as const;
        const known = said.flatMap(([label, value]) =>
          value ? [`${label} ${value.text} ${value.flag}`] : [],
        );
        return known.length === 0 ? [] : [`${name || say.garnish}: ${known.join(', ')}.`];
      }),
    },
    {
      title: say.whatTheyBring,
      rows: [
        [
          { label: say.salt, value: begun ? worked(carried.saltG, true) : null, unit: 'g' },
          { label: say.water, value: begun ? worked(carried.waterG, true) : null, unit: 'g' },
          {
            label: say.garnishOfTheMix,
            value: begun ? made(percent(values.garnishFraction, 1)) : null,
            unit: '%',
          },
        ],
      ],
      lines: begun
        ? [
            say.allergensEuUkListUnitedStates(
              listOf(values.euAllergens),
              listOf(values.usAllergens),
              values.allergensUnknown.length > 0
                ? say.notKnownForReadThePacks(values.allergensUnknown.length)
                : '',
            ),
          ]
        : [say.allergens],
    },
  ];
}

function pieceCell({ pieceSize, shape }: BinderSlice['garnish'][number]): Filled | null {
  const size = filled('length', pieceSize, 'mm');
  return (
    size && { ...size, text: `${size.text}, ${PIECE_SHAPE_NAMES[shape].split(',')[0]?.toLowerCase() ?? ''}` }
  );
}

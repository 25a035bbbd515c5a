import type { Batch } from '@larderwright/calc/batch';
import type { BinderContext, BinderSlice, BinderValues } from '@larderwright/calc/binder';
import type { Verdict } from '@larderwright/calc/findings';
import type { Allergen } from '@larderwright/calc/ingredients';
import { fixedText } from '@larderwright/calc/quantities';
import { filled, percent, words, worked } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { PANADE_NAMES, PIECE_SHAPE_NAMES } from '../words/binder-names.ts';

const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });
const lengthMade = (mm: number | null) => made(mm === null ? null : `${fixedText(mm, 1)} mm`);
const listOf = (allergens: readonly Allergen[]) =>
  allergens.map(({ name }) => name).join(', ') || 'none known';

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
      title: 'For what',
      rows: [
        [
          { label: 'Product', value: words(batch.product.name), wide: true },
          { label: 'Kitchen', value: words(batch.product.kitchen), wide: true },
          { label: 'Meat', value: filled('mass', slice.meat, 'g') ?? worked(values.meatG, true), unit: 'g' },
        ],
        [
          {
            label: 'Mould inside, wide',
            value: filled('length', slice.mouldWidth, 'mm') ?? lengthMade(mouldWidthMm),
            unit: 'mm',
          },
          {
            label: 'Slice, high',
            value: filled('length', slice.mouldHeight, 'mm') ?? lengthMade(mouldHeightMm),
            unit: 'mm',
          },
          { label: 'Slice, thick', value: filled('length', slice.sliceThickness, 'mm'), unit: 'mm' },
          { label: 'Prepared by' },
          { label: 'Date', unit: 'date' },
        ],
      ],
    },
    {
      title: `Panade: ${hasPanade ? PANADE_NAMES[slice.panadeKind] : 'none'}`,
      rows: [
        [
          { label: 'Wanted, of the meat', value: filled('fraction', slice.panadeShare, '%'), unit: '%' },
          { label: 'Lost as steam', value: filled('fraction', slice.panadeLoss, '%'), unit: '%' },
          { label: 'Cooked, worked out', value: hasPanade ? worked(panade.cookedG, true) : null, unit: 'g' },
          { label: 'Cooked, weighed', value: filled('mass', slice.panadeCooked, 'g'), unit: 'g' },
          {
            label: 'Of the meat',
            value: hasPanade ? made(percent(panade.shareFraction, 1)) : null,
            unit: '%',
          },
        ],
        [
          { label: 'On a thin tray, into the cold at', unit: 'clock' },
          { label: 'Cold (4 °C, 39 °F or below) by', unit: 'clock' },
          {
            label: 'At mixing',
            value: filled('temperature', slice.panadeTemp, slice.panadeTemp.unit),
            unit: '°C',
          },
        ],
      ],
      table: {
        columns: ['Part', 'Weigh', 'Salt by pack', 'Water by pack', 'Scale reads g', 'Lot'],
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
      title: 'Egg, cream, other binders',
      rows: [
        [
          { label: 'Egg', value: filled('mass', slice.egg, 'g'), unit: 'g' },
          { label: 'Cream, 35 % fat', value: filled('mass', slice.cream, 'g'), unit: 'g' },
          {
            label: 'US sausage name that limits binders',
            value: slice.usNamedSausage ? 'yes' : 'no',
            wide: true,
          },
        ],
      ],
      table: {
        columns: ['Binder', 'Weigh', 'Salt by pack', 'Water by pack', 'Scale reads g', 'Lot'],
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
      title: 'Garnish',
      table: {
        columns: ['What', 'Bought', 'Left', 'Ready', 'Piece', 'In a slice', 'Cold by', 'Reads g', 'Lot'],
        rows: slice.garnish.map((row) => {
          const mine = values.garnish.find(({ lineId }) => lineId === row.id);
          const state = [row.dried ? 'dried' : '', row.rawAllium ? 'raw' : ''].filter(Boolean).join(', ');
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
          ['salt by pack', filled('fraction', salt, '%')],
          ['water', filled('fraction', water, '%')],
          ['strips laid along', filled('count', laidCount, 'count', false)],
        ] as const;
        const known = said.flatMap(([label, value]) =>
          value ? [`${label} ${value.text} ${value.flag}`] : [],
        );
        return known.length === 0 ? [] : [`${name || 'Garnish'}: ${known.join(', ')}.`];
      }),
    },
    {
      title: 'What they bring',
      rows: [
        [
          { label: 'Salt', value: begun ? worked(carried.saltG, true) : null, unit: 'g' },
          { label: 'Water', value: begun ? worked(carried.waterG, true) : null, unit: 'g' },
          {
            label: 'Garnish, of the mix',
            value: begun ? made(percent(values.garnishFraction, 1)) : null,
            unit: '%',
          },
        ],
      ],
      lines: begun
        ? [
            `Allergens, EU and UK list: ${listOf(values.euAllergens)}. United States list: ${listOf(values.usAllergens)}.${
              values.allergensUnknown.length > 0
                ? ` Not known for ${values.allergensUnknown.length}: read the packs.`
                : ''
            }`,
          ]
        : ['Allergens:'],
    },
  ];
}

function pieceCell({ pieceSize, shape }: BinderSlice['garnish'][number]): Filled | null {
  const size = filled('length', pieceSize, 'mm');
  return (
    size && { ...size, text: `${size.text}, ${PIECE_SHAPE_NAMES[shape].split(',')[0]?.toLowerCase() ?? ''}` }
  );
}

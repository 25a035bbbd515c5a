import type { Batch } from '@larderwright/calc/batch';
import type { Verdict } from '@larderwright/calc/findings';
import {
  ALLERGEN_CLASSES,
  type LabelPart,
  type LabelSlice,
  type LabelValues,
  publishedCollagenOf,
} from '@larderwright/calc/label';
import type { Entry } from '@larderwright/calc/quantities';
import { filled, words, worked } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock, CardTable } from '../parts/card-blocks.tsx';
import { EU_ROW_NAMES, figureText, US_ROW_NAMES, WARNING_WORDS } from '../words/label.ts';
import {
  ALCOHOL_CHOICES,
  AUDIENCE_NAMES,
  HURDLE_NAMES,
  LOSS_NAMES,
  MARKET_NAMES,
  PACK_NAMES,
} from '../words/label-names.ts';
import { listText, netText, quantityText, storeLine } from './label-text.ts';
import type { Sold } from './sold-as.ts';

const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });
const name = <Id extends string>(names: Readonly<Record<Id, string>>, id: Id | null) =>
  id === null ? null : names[id];
const percent = (entry: Entry) => filled('fraction', entry, '%');

function collagenCell(slice: LabelSlice, part: LabelPart): Filled | null {
  const said = slice.lines.find(({ id }) => id === part.id);
  if (!said) return null;
  const typed = percent(said.collagen);
  if (typed) return typed;
  const cut = publishedCollagenOf(said.collagenCut);
  return cut ? { text: cut.name, flag: 'E' } : null;
}

/** What was typed of an ingredient's nutrition, in short. */
function figuresCell(slice: LabelSlice, part: LabelPart): string | null {
  const row = [...slice.lines, ...slice.extras].find(({ id }) => id === part.id);
  if (!row) return null;
  const typed = Object.entries(row.figures).filter(([, entry]) => entry.text.trim() !== '');
  return typed.length === 0
    ? null
    : typed.map(([key, entry]) => `${key} ${entry.text} ${entry.unit}`).join('; ');
}

function ticksCell(slice: LabelSlice, part: LabelPart): string {
  const said = [...slice.lines, ...slice.extras].find(({ id }) => id === part.id)?.allergens ?? null;
  const names = part.euAllergens.map((one) => (one.toCheck ? `${one.name}?` : one.name)).join(', ');
  if (said === null) return part.allergensTold ? names || 'none, by table' : `${names} not told`.trim();
  const ticks = ALLERGEN_CLASSES.filter(({ id }) => said.includes(id)).map((one) => one.name);
  return `by pack: ${ticks.join(', ') || 'none'}`;
}

function inputTable(slice: LabelSlice, values: LabelValues): CardTable {
  return {
    columns: [
      'Goes in',
      'g',
      'In the list',
      'Made of',
      'Allergens',
      'Collagen',
      'Nutrition typed',
      'Stressed',
    ],
    rows: values.parts.map((part) => [
      part.ownName || null,
      worked(part.massG),
      part.line?.part === 'curing-salt' ? 'salt, preservatives' : part.name,
      part.madeOf || null,
      ticksCell(slice, part),
      collagenCell(slice, part),
      figuresCell(slice, part),
      part.stressed ? 'yes' : '',
    ]),
    blankRows: values.parts.length === 0 ? 8 : 0,
  };
}

function nutritionTable(values: LabelValues): CardTable {
  const { euTable: eu, euPerServing, usPanel: us } = values;
  const rows = Math.max(eu?.length ?? 9, us?.length ?? 14);
  return {
    columns: ['EU and UK', '100 g', 'Serving', 'United States', 'Serving ', '% DV 2016', '% DV before'],
    rows: Array.from({ length: rows }, (_, index) => {
      const left = eu?.[index];
      const right = us?.[index];
      const dv = (value: number | null | undefined) => (value == null ? '' : `${value} %`);
      return [
        left ? EU_ROW_NAMES[left.id] : '',
        left ? figureText(left.declared) : '',
        left && euPerServing ? figureText(euPerServing[index]?.declared ?? null) : '',
        right ? US_ROW_NAMES[right.id] : '',
        right ? figureText(right.declared) : '',
        dv(right?.percentDv2016),
        dv(right?.percentDv1993),
      ];
    }),
  };
}

/** Blocks of the label card. What is not known is a box to write in. */
export function labelBlocks(
  batch: Batch,
  slice: LabelSlice,
  values: LabelValues,
  verdicts: readonly Verdict[],
  sold: Sold | null,
): CardBlock[] {
  const alcohol = ALCOHOL_CHOICES.find(({ value }) => value === slice.alcohol)?.label ?? null;
  return [
    {
      title: 'The food',
      rows: [
        [
          { label: 'Name of the food', value: words(slice.name), broad: true },
          { label: 'Maker and place', value: words(slice.maker), wide: true },
        ],
        [
          { label: 'Origin', value: words(slice.origin), wide: true },
          { label: 'Sold in', value: name(MARKET_NAMES, slice.market) },
          { label: 'Eaten by', value: name(AUDIENCE_NAMES, slice.audience), wide: true },
          { label: 'Looks like a cut', value: slice.looksLikeCut ? 'yes' : 'no' },
        ],
        [
          {
            label: 'Filled',
            value: filled('mass', slice.filled, 'g') ?? worked(values.filledG, true),
            unit: 'g',
          },
          {
            label: 'Finished',
            value: filled('mass', batch.product.finished, 'g') ?? worked(values.finishedG, true),
            unit: 'g',
          },
          { label: 'Lost', value: name(LOSS_NAMES, slice.loss), wide: true },
          { label: 'Fat poured off', value: filled('mass', slice.drainedFat, 'g'), unit: 'g' },
          { label: 'Alcohol', value: alcohol, wide: true },
        ],
      ],
    },
    {
      title: 'Ingredients, most first; ALLERGENS in capitals',
      lines:
        values.eu.length === 0
          ? ['____________________________________________']
          : [`EU and UK: ${listText(values.eu)}.`, `United States: ${listText(values.us)}.`],
      verdicts: sheetVerdicts(verdicts.filter(({ id }) => id === 'label.allergens')),
      rows: [
        [
          {
            label: 'Quantities',
            value: made(
              values.quantities && values.quantities.length > 0
                ? values.quantities.map((one) => `${one.name} ${quantityText(one)}`).join('; ')
                : null,
            ),
            broad: true,
          },
        ],
      ],
    },
    { title: 'Nutrition, as declared', table: nutritionTable(values) },
    {
      title: 'Keeping',
      lines: values.warnings.map((id) => WARNING_WORDS[id]),
      rows: [
        [
          { label: 'Pack', value: name(PACK_NAMES, slice.pack), wide: true },
          { label: 'Hurdle', value: name(HURDLE_NAMES, slice.hurdle), wide: true },
          {
            label: 'Keep at or below',
            value: filled('temperature', slice.storeAt, slice.storeAt.unit),
            unit: '°C',
          },
          { label: 'Life', value: filled('time', slice.life, 'd'), unit: 'days' },
        ],
        [
          {
            label: 'Storage line',
            value: made(values.storeAtC === null ? null : storeLine(slice, values)),
            broad: true,
          },
        ],
        [
          {
            label: 'Cooked',
            value: slice.cookedOn ? words(slice.cookedOn) : made(values.cookedOn),
            unit: 'date',
          },
          { label: 'Day of the cook', value: slice.cookDayCounts ? 'day one' : 'does not count' },
          { label: 'Packed', value: words(slice.packedOn), unit: 'date' },
          {
            label: slice.dateKind === 'use-by' ? 'USE BY' : 'BEST BEFORE',
            value: made(values.useBy),
            unit: 'date',
          },
        ],
        [
          { label: 'Net weight', value: filled('mass', slice.netWeight, slice.netWeight.unit), unit: 'g' },
          {
            label: 'As printed',
            value: made(values.netG === null ? null : netText(values.netG, slice.market)),
            wide: true,
          },
          { label: 'Serving', value: filled('mass', slice.serving, slice.serving.unit), unit: 'g' },
          {
            label: 'Servings',
            value: made(
              values.servings ? `${values.servings.about ? 'about ' : ''}${values.servings.declared}` : null,
            ),
          },
        ],
        [
          { label: 'Price of a slice', value: made(sold?.perSlice ?? null) },
          { label: 'of a kg', value: made(sold?.perKg ?? null) },
          { label: 'of a lb', value: made(sold?.perLb ?? null) },
          { label: 'Label checked against the packs by', wide: true },
        ],
      ],
      verdicts: sheetVerdicts(verdicts.filter(({ id }) => id === 'label.use-by')),
    },
    { title: 'What went in', table: inputTable(slice, values) },
  ];
}

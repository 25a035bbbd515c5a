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
import * as say from '#words/label/label-blocks.ts';
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
  if (said === null) return part.allergensTold ? names || say.noneByTable : say.notTold(names).trim();
  const ticks = ALLERGEN_CLASSES.filter(({ id }) => said.includes(id)).map((one) => one.name);
  return say.byPack(ticks.join(', ') || say.none);
}

function inputTable(slice: LabelSlice, values: LabelValues): CardTable {
  return {
    columns: [
      say.goesIn,
      'g',
      say.inTheList,
      say.madeOf,
      say.allergens,
      say.collagen,
      say.nutritionTyped,
      say.stressed,
    ],
    rows: values.parts.map((part) => [
      part.ownName || null,
      worked(part.massG),
      part.line?.part === 'curing-salt' ? say.saltPreservatives : part.name,
      part.madeOf || null,
      ticksCell(slice, part),
      collagenCell(slice, part),
      figuresCell(slice, part),
      part.stressed ? say.yes : '',
    ]),
    blankRows: values.parts.length === 0 ? 8 : 0,
  };
}

function nutritionTable(values: LabelValues): CardTable {
  const { euTable: eu, euPerServing, usPanel: us } = values;
  const rows = Math.max(eu?.length ?? 9, us?.length ?? 14);
  return {
    columns: [say.euAndUk, '100 g', say.serving, say.unitedStates, say.serving2, say.dv2016, say.dvBefore],
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
      title: say.theFood,
      rows: [
        [
          { label: say.nameOfTheFood, value: words(slice.name), broad: true },
          { label: say.makerAndPlace, value: words(slice.maker), wide: true },
        ],
        [
          { label: say.origin, value: words(slice.origin), wide: true },
          { label: say.soldIn, value: name(MARKET_NAMES, slice.market) },
          { label: say.eatenBy, value: name(AUDIENCE_NAMES, slice.audience), wide: true },
          { label: say.looksLikeACut, value: slice.looksLikeCut ? say.yes : say.no },
        ],
        [
          {
            label: say.filled,
            value: filled('mass', slice.filled, 'g') ?? worked(values.filledG, true),
            unit: 'g',
          },
          {
            label: say.finished,
            value: filled('mass', batch.product.finished, 'g') ?? worked(values.finishedG, true),
            unit: 'g',
          },
          { label: say.lost, value: name(LOSS_NAMES, slice.loss), wide: true },
          { label: say.fatPouredOff, value: filled('mass', slice.drainedFat, 'g'), unit: 'g' },
          { label: say.alcohol, value: alcohol, wide: true },
        ],
      ],
    },
    {
      title: say.ingredientsMostFirstAllergens,
      lines:
        values.eu.length === 0
          ? ['____________________________________________']
          : [say.euAndUk2(listText(values.eu)), say.unitedStates2(listText(values.us))],
      verdicts: sheetVerdicts(verdicts.filter(({ id }) => id === 'label.allergens')),
      rows: [
        [
          {
            label: say.quantities,
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
    { title: say.nutritionAsDeclared, table: nutritionTable(values) },
    {
      title: say.keeping,
      lines: values.warnings.map((id) => WARNING_WORDS[id]),
      rows: [
        [
          { label: say.pack, value: name(PACK_NAMES, slice.pack), wide: true },
          { label: say.hurdle, value: name(HURDLE_NAMES, slice.hurdle), wide: true },
          {
            label: say.keepAtOrBelow,
            value: filled('temperature', slice.storeAt, slice.storeAt.unit),
            unit: '°C',
          },
          { label: say.life, value: filled('time', slice.life, 'd'), unit: say.days },
        ],
        [
          {
            label: say.storageLine,
            value: made(values.storeAtC === null ? null : storeLine(slice, values)),
            broad: true,
          },
        ],
        [
          {
            label: say.cooked,
            value: slice.cookedOn ? words(slice.cookedOn) : made(values.cookedOn),
            unit: say.date,
          },
          { label: say.dayOfTheCook, value: slice.cookDayCounts ? say.dayOne : say.doesNotCount },
          { label: say.packed, value: words(slice.packedOn), unit: say.date },
          {
            label: slice.dateKind === 'use-by' ? say.useBy : say.bestBefore,
            value: made(values.useBy),
            unit: say.date,
          },
        ],
        [
          { label: say.netWeight, value: filled('mass', slice.netWeight, slice.netWeight.unit), unit: 'g' },
          {
            label: say.asPrinted,
            value: made(values.netG === null ? null : netText(values.netG, slice.market)),
            wide: true,
          },
          { label: say.serving, value: filled('mass', slice.serving, slice.serving.unit), unit: 'g' },
          {
            label: say.servings,
            value: made(
              values.servings ? `${values.servings.about ? say.about : ''}${values.servings.declared}` : null,
            ),
          },
        ],
        [
          { label: say.priceOfASlice, value: made(sold?.perSlice ?? null) },
          { label: say.ofAKg, value: made(sold?.perKg ?? null) },
          { label: say.ofALb, value: made(sold?.perLb ?? null) },
          { label: say.labelCheckedAgainstThePacksBy, wide: true },
        ],
      ],
      verdicts: sheetVerdicts(verdicts.filter(({ id }) => id === 'label.use-by')),
    },
    { title: say.whatWentIn, table: inputTable(slice, values) },
  ];
}

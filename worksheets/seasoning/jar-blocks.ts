import type { Batch } from '@larderwright/calc/batch';
import type { Allergen } from '@larderwright/calc/ingredients';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import type {
  BlendItem,
  LooseSpice,
  SeasoningSlice,
  SeasoningValues,
  SeasoningWeight,
} from '@larderwright/calc/seasoning';
import { filled, percent, words, worked } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock, CardTable } from '../parts/card-blocks.tsx';
import { SPICE_FORM_NAMES } from '../words/seasoning.ts';
import { spiceName } from './row-names.ts';

const BLEND_COLUMNS = [
  'Spice',
  'Form',
  'Parts',
  'Share',
  'g/kg',
  'Weigh',
  'Whole to grind',
  'Scale reads',
  'Lot',
];
const LOOSE_COLUMNS = ['Seasoning', 'Form', 'Dose', 'Salt in it', 'Weigh', 'Scale reads', 'Lot'];

const made = (text: string): Filled => ({ text, flag: 'W' });

function weighCell(weight: SeasoningWeight | undefined): Filled | null {
  if (!weight || weight.toWeighG === null) return null;
  const { dilution, onScaleG, weighable, toWeighG } = weight;
  if (dilution)
    return made(
      `${fixedText(dilution.useG, 2)} g of ${plainText(Number(dilution.spiceG.toFixed(3)))} g in ${fixedText(dilution.saltG, 2)} g salt`,
    );
  return weighable === true && onScaleG !== null ? made(`${plainText(onScaleG)} g`) : worked(toWeighG, true);
}

function blendTable(items: readonly BlendItem[], weights: readonly SeasoningWeight[]): CardTable {
  return {
    columns: BLEND_COLUMNS,
    rows: items.map((item) => {
      const weight = weights.find(({ id }) => id === item.id);
      return [
        spiceName(item),
        SPICE_FORM_NAMES[item.form],
        filled('ratio', item.parts, 'ratio', false),
        percent(weight?.shareFraction ?? null, 1),
        weight?.gPerKg == null ? null : made(fixedText(weight.gPerKg, 2)),
        weighCell(weight),
        worked(weight?.wholeG ?? null, true),
        null,
        null,
      ];
    }),
    blankRows: items.length === 0 ? 8 : 0,
  };
}

function looseTable(rows: readonly LooseSpice[], weights: readonly SeasoningWeight[]): CardTable {
  return {
    columns: LOOSE_COLUMNS,
    rows: rows.map((row) => [
      spiceName(row),
      SPICE_FORM_NAMES[row.form],
      filled('fraction', row.dose, 'g/kg'),
      filled('fraction', row.salt, '%'),
      weighCell(weights.find(({ id }) => id === row.id)),
      null,
      null,
    ]),
    blankRows: rows.length === 0 ? 4 : 1,
  };
}

const allergenText = (allergens: readonly Allergen[]) => allergens.map(({ name }) => name).join(', ');

function allergenLines(values: SeasoningValues): string[] {
  const { euAllergens, usAllergens, allergensUnknown } = values;
  return [
    `Allergens, EU and UK list: ${allergenText(euAllergens) || 'none known'}. United States list: ${allergenText(usAllergens) || 'none known'}.`,
    ...(allergensUnknown.length > 0
      ? [`Not known for ${allergensUnknown.length} of the kitchen's own: read the pack.`]
      : []),
  ];
}

/** Blocks of the jar label. What is not known is a box to write in. */
export function jarBlocks(batch: Batch, slice: SeasoningSlice, values: SeasoningValues): CardBlock[] {
  const blends = slice.blends.length > 0 ? slice.blends : [null];
  const said = values.blends.some(({ items }) => items.length > 0) || values.loose.length > 0;
  return [
    {
      title: 'Into what, and on which scale',
      rows: [
        [
          { label: 'Product', value: words(batch.product.name), wide: true },
          { label: 'Kitchen', value: words(batch.product.kitchen), wide: true },
          {
            label: 'Total mix',
            value: filled('mass', slice.batch, slice.batch.unit) ?? worked(values.batchG, true),
            unit: 'kg',
          },
        ],
        [
          { label: 'Scale step', value: filled('mass', slice.scaleReadability, 'g'), unit: 'g' },
          {
            label: 'Too little for it',
            value: slice.diluteInSalt ? 'carried in salt, 1 in 10' : 'left as is',
            wide: true,
          },
          {
            label: 'Left in the mill',
            value: filled('fraction', slice.grindingLoss, '%'),
            unit: '%',
          },
          {
            label: 'Times the tasted batch',
            value: filled('ratio', slice.timesTasted, 'ratio', false),
          },
        ],
      ],
    },
    ...blends.map((blend, place): CardBlock => {
      const weights = values.blends.find(({ blendId }) => blendId === blend?.id);
      return {
        title: blend === null ? 'Jar' : `Jar: ${blend.name.trim() || `blend ${place + 1}`}`,
        rows: [
          [
            { label: 'Blend', value: blend && words(blend.name), wide: true },
            {
              label: 'Dose',
              value: blend && filled('fraction', blend.dose, 'g/kg'),
              unit: 'g/kg of total mix',
            },
            {
              label: 'Into this batch',
              value: weights?.items.length ? worked(weights.massG, true) : null,
              unit: 'g',
            },
            { label: 'Ground on', value: blend && words(blend.groundOn), unit: 'date' },
          ],
          [
            { label: 'Mixed for batches', value: blend && filled('ratio', blend.stockTimes, 'ratio', false) },
            {
              label: 'Stock in all',
              value: weights?.items.length ? worked(weights.stockG, true) : null,
              unit: 'g',
            },
            { label: 'Mixed by' },
            { label: 'Mixed on', unit: 'date' },
          ],
        ],
        table: blendTable(blend?.items ?? [], weights?.items ?? []),
      };
    }),
    { title: 'By themselves', table: looseTable(slice.loose, values.loose) },
    {
      title: 'Salt and allergens',
      rows: [
        [
          {
            label: 'Plain salt to leave out',
            value: values.dilutionSaltG > 0 ? worked(values.dilutionSaltG, true) : null,
            unit: 'g',
          },
          { label: 'Salt the seasoning brings', value: said ? carriedText(values) : null, unit: 'g' },
          ...(said ? [] : [{ label: 'Allergens, from the packs', broad: true }]),
        ],
      ],
      lines: said ? allergenLines(values) : [],
    },
  ];
}

function carriedText({ carriedSaltG }: SeasoningValues): Filled | null {
  if (carriedSaltG === null) return null;
  const { min, max } = carriedSaltG;
  return made(min === max ? `${fixedText(max, 1)} g` : `${fixedText(min, 1)} to ${fixedText(max, 1)} g`);
}

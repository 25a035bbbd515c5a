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
import * as say from '#words/seasoning/jar-blocks.ts';
import { filled, percent, words, worked } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock, CardTable } from '../parts/card-blocks.tsx';
import { SPICE_FORM_NAMES } from '../words/seasoning.ts';
import { spiceName } from './row-names.ts';

const BLEND_COLUMNS = [
  say.spice,
  say.form,
  say.parts,
  say.share,
  'g/kg',
  say.weigh,
  say.wholeToGrind,
  say.scaleReads,
  say.lot,
];
const LOOSE_COLUMNS = [say.seasoning, say.form, say.dose, say.saltInIt, say.weigh, say.scaleReads, say.lot];

const made = (text: string): Filled => ({ text, flag: 'W' });

function weighCell(weight: SeasoningWeight | undefined): Filled | null {
  if (!weight || weight.toWeighG === null) return null;
  const { dilution, onScaleG, weighable, toWeighG } = weight;
  if (dilution)
    return made(
      say.gOfGInGSalt(
        fixedText(dilution.useG, 2),
        plainText(Number(dilution.spiceG.toFixed(3))),
        fixedText(dilution.saltG, 2),
      ),
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
    say.allergensEuUkListUnitedStates(
      allergenText(euAllergens) || say.noneKnown,
      allergenText(usAllergens) || say.noneKnown,
    ),
    ...(allergensUnknown.length > 0 ? [say.notKnownKitchensOwnReadPack(allergensUnknown.length)] : []),
  ];
}

/** Blocks of the jar label. What is not known is a box to write in. */
export function jarBlocks(batch: Batch, slice: SeasoningSlice, values: SeasoningValues): CardBlock[] {
  const blends = slice.blends.length > 0 ? slice.blends : [null];
  const said = values.blends.some(({ items }) => items.length > 0) || values.loose.length > 0;
  return [
    {
      title: say.intoWhatAndOnWhichScale,
      rows: [
        [
          { label: say.product, value: words(batch.product.name), wide: true },
          { label: say.kitchen, value: words(batch.product.kitchen), wide: true },
          {
            label: say.totalMix,
            value: filled('mass', slice.batch, slice.batch.unit) ?? worked(values.batchG, true),
            unit: 'kg',
          },
        ],
        [
          { label: say.scaleStep, value: filled('mass', slice.scaleReadability, 'g'), unit: 'g' },
          {
            label: say.tooLittleForIt,
            value: slice.diluteInSalt ? say.carriedInSalt1In10 : say.leftAsIs,
            wide: true,
          },
          {
            label: say.leftInTheMill,
            value: filled('fraction', slice.grindingLoss, '%'),
            unit: '%',
          },
          {
            label: say.timesTheTastedBatch,
            value: filled('ratio', slice.timesTasted, 'ratio', false),
          },
        ],
      ],
    },
    ...blends.map((blend, place): CardBlock => {
      const weights = values.blends.find(({ blendId }) => blendId === blend?.id);
      return {
        title: blend === null ? say.jar : say.jar2(blend.name.trim() || say.blend(place + 1)),
        rows: [
          [
            { label: say.blend2, value: blend && words(blend.name), wide: true },
            {
              label: say.dose,
              value: blend && filled('fraction', blend.dose, 'g/kg'),
              unit: say.gKgOfTotalMix,
            },
            {
              label: say.intoThisBatch,
              value: weights?.items.length ? worked(weights.massG, true) : null,
              unit: 'g',
            },
            { label: say.groundOn, value: blend && words(blend.groundOn), unit: say.date },
          ],
          [
            { label: say.mixedForBatches, value: blend && filled('ratio', blend.stockTimes, 'ratio', false) },
            {
              label: say.stockInAll,
              value: weights?.items.length ? worked(weights.stockG, true) : null,
              unit: 'g',
            },
            { label: say.mixedBy },
            { label: say.mixedOn, unit: say.date },
          ],
        ],
        table: blendTable(blend?.items ?? [], weights?.items ?? []),
      };
    }),
    { title: say.byThemselves, table: looseTable(slice.loose, values.loose) },
    {
      title: say.saltAndAllergens,
      rows: [
        [
          {
            label: say.plainSaltToLeaveOut,
            value: values.dilutionSaltG > 0 ? worked(values.dilutionSaltG, true) : null,
            unit: 'g',
          },
          { label: say.saltTheSeasoningBrings, value: said ? carriedText(values) : null, unit: 'g' },
          ...(said ? [] : [{ label: say.allergensFromThePacks, broad: true }]),
        ],
      ],
      lines: said ? allergenLines(values) : [],
    },
  ];
}

function carriedText({ carriedSaltG }: SeasoningValues): Filled | null {
  if (carriedSaltG === null) return null;
  const { min, max } = carriedSaltG;
  return made(min === max ? `${fixedText(max, 1)} g` : say.toG(fixedText(min, 1), fixedText(max, 1)));
}

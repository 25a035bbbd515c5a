import type { Batch } from '@larderwright/calc/batch';
import type { Finding } from '@larderwright/calc/findings';
import type { GeleeSlice, GeleeValues } from '@larderwright/calc/gelee';
import { type Entry, fixedText, type QuantityKind } from '@larderwright/calc/quantities';
import * as say from '#words/gelee/jelly-blocks.ts';
import { filled, words } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import {
  BLOOM_RULE_NAMES,
  ENZYME_FRUIT_NAMES,
  GELATINE_FORM_NAMES,
  GELATINE_ORIGIN_NAMES,
  GELLING_NAMES,
  JELLY_USE_NAMES,
  SHEET_GRADE_NAMES,
} from '../words/gelee-names.ts';
import { wordsOf } from '../words/index.ts';
import { BLANK_JELLY, PLATE_TEST, POURS } from './blank-blocks.ts';
import { gellingText, sheetsText, soakingText, underCrustText } from './figure-text.ts';

const typed = (kind: QuantityKind, entry: Entry) => filled(kind, entry, entry.unit);
/** A bare number: bloom, pH. */
const bare = (kind: QuantityKind, entry: Entry) => filled(kind, entry, entry.unit, false);
const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });

/** Blocks of the jelly card. What is not known is a box to write in. */
export function jellyBlocks(
  batch: Batch,
  slice: GeleeSlice,
  values: GeleeValues,
  findings: readonly Finding[],
): readonly CardBlock[] {
  const agar = slice.gelling === 'agar';
  const { strengthFraction, conversion } = values;
  const strength = typed('fraction', slice.strength);
  const said = values.liquidMl !== null || values.underCrust !== null;
  if (!said && findings.length === 0 && strength === null) return namedOnly(batch);
  return [
    {
      title: say.whatIsSet,
      rows: [
        [
          { label: say.product, value: words(batch.product.name), wide: true },
          { label: say.kitchen, value: words(batch.product.kitchen), wide: true },
          { label: say.liquid, value: typed('volume', slice.liquid), unit: 'mL' },
        ],
        [
          { label: say.forWord, value: JELLY_USE_NAMES[slice.use], wide: true },
          { label: say.setWith, value: GELLING_NAMES[slice.gelling] },
          {
            label: say.strengthGTo100Ml,
            value: strength ?? made(strengthFraction === null ? null : percentText(strengthFraction, 2)),
            unit: '%',
          },
          ...(agar ? [] : [{ label: say.toldForBloom, value: bare('count', slice.strengthBloom) }]),
        ],
      ],
    },
    ...(agar ? [] : gelatineBlocks(slice, values)),
    {
      title: say.toWeigh,
      rows: [
        [
          ...(agar || conversion === null
            ? []
            : [
                { label: say.byTheSquareRoot, value: made(gramsText(conversion.squareRootG)) },
                { label: say.byTheLinearRule, value: made(gramsText(conversion.linearG)) },
                { label: say.apart, value: made(gramsText(Math.abs(conversion.differenceG))) },
              ]),
          {
            label: agar ? say.agarToWeigh : say.gelatineToWeigh,
            value: made(gellingText(values)),
            unit: 'g',
          },
        ],
        [
          ...(agar || slice.form === 'powder'
            ? []
            : [{ label: say.inSheets, value: made(sheetsText(values)) }]),
          ...(agar ? [] : [{ label: say.soakInWater, value: made(soakingText(values)), unit: 'g' }]),
          { label: say.weighed, unit: 'g' },
          { label: say.lot },
          { label: say.by },
        ],
      ],
      lines: findings
        .filter(({ severity, id }) => severity === 'caution' || id === 'gelee.weakened')
        .map(({ id, params }) => wordsOf(id, params).title),
    },
    PLATE_TEST,
    {
      ...POURS,
      rows: [
        [
          { label: say.roomInsideTheCrusts, value: typed('volume', slice.cavity), unit: 'mL' },
          { label: say.jellyForIt, value: made(underCrustText(values)), unit: 'mL' },
          { label: say.jellyWhenPoured, value: typed('temperature', slice.pour), unit: '°C' },
          { label: say.coreWhenPoured, value: typed('temperature', slice.core), unit: '°C' },
        ],
      ],
    },
  ];
}

function gelatineBlocks(slice: GeleeSlice, values: GeleeValues): CardBlock[] {
  const sheet = slice.form === 'sheet';
  const typedBloom = bare('count', slice.bloom);
  const bloomOfGrade = sheet && typedBloom?.flag !== 'E' && values.bloom !== null;
  return [
    {
      title: say.gelatineAtHand,
      rows: [
        [
          { label: say.form, value: GELATINE_FORM_NAMES[slice.form], wide: true },
          {
            label: say.bloom,
            value: bloomOfGrade ? { text: fixedText(values.bloom ?? 0, 0), flag: 'D' } : typedBloom,
          },
          ...(sheet
            ? [
                { label: say.grade, value: SHEET_GRADE_NAMES[slice.sheetGrade] },
                {
                  label: say.oneSheet,
                  value:
                    typed('mass', slice.sheetMass) ??
                    (values.sheetG === null
                      ? null
                      : ({ text: `${fixedText(values.sheetG, 1)} g`, flag: 'D' } as const)),
                  unit: 'g',
                },
              ]
            : []),
          { label: say.madeOf, value: GELATINE_ORIGIN_NAMES[slice.origin], wide: true },
        ],
        [{ label: say.ruleBetweenBlooms, value: BLOOM_RULE_NAMES[slice.rule], broad: true }],
      ],
    },
    {
      title: say.whatChangesTheSet,
      rows: [
        [
          { label: say.stockSetsByItself, value: typed('fraction', slice.naturalSet), unit: '%' },
          { label: 'pH', value: bare('ratio', slice.ph) },
          { label: say.alcoholByVolume, value: typed('fraction', slice.alcohol), unit: '%' },
          { label: say.sugar, value: typed('fraction', slice.sugar), unit: '%' },
          {
            label: say.rawFruitInIt,
            value: slice.rawFruit.map((fruit) => ENZYME_FRUIT_NAMES[fruit]).join(', ') || null,
            wide: true,
          },
        ],
      ],
    },
  ];
}

/** The form for a pencil, with what the batch is called. */
function namedOnly(batch: Batch): readonly CardBlock[] {
  const values: Readonly<Record<string, string | null>> = {
    Product: words(batch.product.name),
    Kitchen: words(batch.product.kitchen),
  };
  return BLANK_JELLY.map((block) => ({
    ...block,
    rows: (block.rows ?? []).map((row) =>
      row.map((box) => (box.label in values ? { ...box, value: values[box.label] } : box)),
    ),
  }));
}

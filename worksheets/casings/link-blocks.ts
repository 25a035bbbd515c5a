import type { Batch } from '@larderwright/calc/batch';
import { type CasingsSlice, type CasingsValues, casingOf } from '@larderwright/calc/casings';
import { type Entry, fixedText, type QuantityKind } from '@larderwright/calc/quantities';
import * as say from '#words/casings/link-blocks.ts';
import { filled, words, worked } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock, CardTable } from '../parts/card-blocks.tsx';
import { casingPrep, TWIST_PLAN } from '../words/casings.ts';
import { LINK_BY_NAMES } from '../words/casings-names.ts';
import { soakPlan } from './blank-blocks.ts';
import { countText, metresText, piecesText, soakText, weighedText } from './figure-text.ts';

/** Links weighed for a check. */
const TALLY = 10;

const typed = (kind: QuantityKind, entry: Entry) => filled(kind, entry, entry.unit);
const made = (text: string | null): Filled | null => (text === null ? null : { text, flag: 'W' });

/** Blocks of the casings card. What is not known is a box to write in. */
export function linkBlocks(batch: Batch, slice: CasingsSlice, values: CasingsValues): readonly CardBlock[] {
  const row = casingOf(slice.casingId);
  const { perMetreG, casing, links } = values;
  const usual: Filled | null =
    row && slice.stuffedDiameter.text.trim() === '' ? { text: `${row.usualMm} mm`, flag: 'D' } : null;
  return [
    {
      title: say.whatIsFilledIntoWhat,
      rows: [
        [
          { label: say.product, value: words(batch.product.name), wide: true },
          { label: say.kitchen, value: words(batch.product.kitchen), wide: true },
          { label: say.toFill, value: typed('mass', slice.batch) ?? worked(values.batchG, true), unit: 'kg' },
        ],
        [
          { label: say.casing, value: row?.name ?? null, wide: true },
          { label: say.widthOnceStuffed, value: typed('length', slice.stuffedDiameter) ?? usual, unit: 'mm' },
          { label: say.density, value: typed('density', slice.density), unit: 'g/mL' },
          { label: say.howFull, value: typed('fraction', slice.fullness), unit: '%' },
          { label: say.spare, value: typed('fraction', slice.spare), unit: '%' },
        ],
        [
          { label: say.lotOfTheCasing },
          {
            label: say.oneMetreHolds,
            value: perMetreG === null ? null : made(`${fixedText(perMetreG, 0)} g`),
            unit: 'g',
          },
          { label: say.oneStrand, value: typed('length', slice.strandLength), unit: 'm' },
          { label: say.oneBundle, value: typed('length', slice.hankLength), unit: 'm' },
        ],
      ],
    },
    {
      ...soakPlan([
        { label: say.filled, value: casing && made(metresText(casing.filledM)), unit: 'm' },
        { label: say.toSoakSpareInIt, value: made(soakText(values)), unit: 'm' },
        { label: say.thatIs, value: made(piecesText(values)), wide: true },
      ]),
      lines: row ? [`${casingPrep[row.id] ?? ''}${soakLine(row)}`] : [],
    },
    {
      title: say.links,
      rows: [
        [
          { label: say.told, value: LINK_BY_NAMES[slice.linkBy] },
          {
            label: say.weightOfOne,
            value:
              slice.linkBy === 'mass' ? typed('mass', slice.linkMass) : worked(links?.linkG ?? null, true),
            unit: 'g',
          },
          {
            label: say.lengthOfOne,
            value:
              slice.linkBy === 'length'
                ? typed('length', slice.linkLength)
                : links && made(`${fixedText(links.linkMm, 0)} mm`),
            unit: 'mm',
          },
          { label: say.howMany, value: made(countText(values)) },
          { label: say.leftOver, value: worked(links?.leftoverG ?? null, true), unit: 'g' },
        ],
      ],
      lines: [TWIST_PLAN],
    },
    {
      title: say.linksAsWeighed,
      rows: [
        [
          { label: say.onAverage, value: made(weighedText(values)), wide: true },
          { label: say.scale },
          { label: say.weighedBy },
        ],
      ],
      table: tally(slice.actualLinks),
    },
  ];
}

function soakLine({ soakMin, soakC }: NonNullable<ReturnType<typeof casingOf>>): string {
  if (soakMin === null) return '';
  const [min, max] = soakMin;
  const time = min === max ? say.minutes(max) : say.toMinutes(min, max);
  if (soakC === null) return say.soak(time);
  const [low, high] = soakC;
  return say.soakAtC(time, low === high ? `${high}` : say.to(low, high));
}

/** Five to a row, each with its number. */
function tally(actual: readonly Entry[]): CardTable {
  const boxes = Math.max(TALLY, actual.length);
  const rows = Array.from({ length: Math.ceil(boxes / 5) }, (_, row) =>
    Array.from({ length: 5 }, (_unused, place) => {
      const entry = actual[row * 5 + place];
      return entry ? typed('mass', entry) : null;
    }),
  );
  return { columns: ['1, 6 …', '2, 7 …', '3, 8 …', '4, 9 …', '5, 10 …'], rows };
}

import type { Batch } from '@larderwright/calc/batch';
import {
  type CrustSlice,
  type CrustValues,
  type MouldDimension,
  type MouldItem,
  PASTES,
  type PasteWeights,
} from '@larderwright/calc/mould';
import { type Entry, fixedText, type QuantityKind } from '@larderwright/calc/quantities';
import * as say from '#words/crust/crust-blocks.ts';
import { filled, words, worked } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { CardBlock, CardBox } from '../parts/card-blocks.tsx';
import { PASTE_PART_NAMES } from '../words/crust-names.ts';
import { DIMENSION_NAMES, SHAPE_NAMES } from '../words/mould-names.ts';
import { caulText, chimneysText, placesText, sheetText } from './figure-text.ts';

const typed = (kind: QuantityKind, entry: Entry) => filled(kind, entry, entry.unit);
const made = (text: string | null | undefined): Filled | null => (text ? { text, flag: 'W' } : null);

/** Blocks of the crust card. What is not known is a box to write in. */
export function crustBlocks(
  batch: Batch,
  slice: CrustSlice,
  mould: MouldItem | null,
  values: CrustValues,
): readonly CardBlock[] {
  return [
    {
      title: say.pieAndPastry,
      rows: [
        [
          { label: say.product, value: words(batch.product.name), wide: true },
          { label: say.kitchen, value: words(batch.product.kitchen), wide: true },
          { label: say.mould, value: mould && (words(mould.name) ?? SHAPE_NAMES[mould.shape]), wide: true },
          { label: say.howMany, value: mould && typed('count', mould.count) },
        ],
        measureBoxes(mould),
        [
          { label: say.baseAndWalls, value: typed('length', slice.thickness), unit: 'mm' },
          { label: say.lid, value: typed('length', slice.lidThickness), unit: 'mm' },
          { label: say.overlap, value: typed('length', slice.overlap), unit: 'mm' },
          { label: say.density, value: typed('density', slice.density), unit: 'g/mL' },
          { label: say.spare, value: typed('fraction', slice.spare), unit: '%' },
        ],
      ],
    },
    cutBlock(values),
    pasteBlock(slice, values),
    liningBlock(slice, values),
  ];
}

function measureBoxes(mould: MouldItem | null): readonly CardBox[] {
  const shown = Object.entries(DIMENSION_NAMES) as [MouldDimension, string][];
  const boxes = shown.flatMap(([name, label]): CardBox[] => {
    const value = mould && typed('length', mould.dimensions[name]);
    return value ? [{ label: say.bare(label), value }] : [];
  });
  if (boxes.length > 0) return boxes;
  return [say.length, say.width, say.depth].map((label) => ({ label: say.bare(label), unit: 'mm' }));
}

function cutBlock(values: CrustValues): CardBlock {
  const { sheets, pastry, pastryTotalG, cavityMl } = values;
  return {
    title: say.cutForEachPie,
    rows: [
      [
        {
          label: sheets?.wall ? say.base : say.baseAndWallsCornersCutOut,
          value: made(sheets && sheetText(sheets.base)),
          unit: 'mm',
          wide: true,
        },
        ...(sheets?.wall ? [{ label: say.wallStrip, value: made(sheetText(sheets.wall)), wide: true }] : []),
        { label: say.lid, value: made(sheets && sheetText(sheets.lid)), unit: 'mm', wide: true },
        { label: say.pastryForOne, value: worked(pastry?.withSpareG ?? null, true), unit: 'g' },
        { label: say.pastryForAll, value: worked(pastryTotalG, true), unit: 'g' },
      ],
      [
        { label: say.chimneys, value: made(chimneysText(values)) },
        { label: say.where, value: made(placesText(values)), wide: true },
        {
          label: say.roomInsideOne,
          value: made(cavityMl === null ? null : `${fixedText(cavityMl, 0)} mL`),
          unit: 'mL',
        },
      ],
    ],
    place: say.drawSheetCornersCutOutLid,
  };
}

function pasteBlock(slice: CrustSlice, { paste, saltG }: CrustValues): CardBlock {
  const parts = Object.keys(PASTE_PART_NAMES) as (keyof PasteWeights)[];
  const name = PASTES.find(({ id }) => id === slice.pasteId)?.name ?? say.theKitchensOwn;
  return {
    title: say.pasteForAll,
    rows: [
      [
        { label: say.paste, value: name, wide: true },
        ...(slice.pasteId === null
          ? [{ label: say.saltOfIt, value: typed('fraction', slice.salt), unit: '%' }]
          : []),
        { label: say.saltItCarries, value: worked(saltG, true), unit: 'g' },
      ],
    ],
    table: {
      columns: parts.map((part) => PASTE_PART_NAMES[part]),
      rows: paste === null ? [] : [parts.map((part) => worked(paste[part], true))],
      blankRows: 1,
    },
  };
}

function liningBlock(slice: CrustSlice, values: CrustValues): CardBlock {
  const { lining } = values;
  return {
    title: say.liningInsideForEachPie,
    rows: [
      [
        { label: say.sliceWidth, value: typed('length', slice.pieceWidth), unit: 'mm' },
        { label: say.overlap, value: typed('length', slice.pieceOverlap), unit: 'mm' },
        { label: say.oneSlice, value: typed('mass', slice.pieceMass), unit: 'g' },
        { label: say.saltInIt, value: typed('fraction', slice.pieceSalt), unit: '%' },
      ],
      [
        { label: say.slices, value: made(lining?.slices == null ? null : `${lining.slices}`) },
        { label: say.theyWeigh, value: worked(lining?.sliced?.massG ?? null, true), unit: 'g' },
        { label: say.theyBringSalt, value: worked(lining?.sliced?.saltG ?? null, true), unit: 'g' },
        { label: say.orCaul, value: made(caulText(values)), unit: 'g' },
      ],
    ],
  };
}

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
      title: 'Pie and pastry',
      rows: [
        [
          { label: 'Product', value: words(batch.product.name), wide: true },
          { label: 'Kitchen', value: words(batch.product.kitchen), wide: true },
          { label: 'Mould', value: mould && (words(mould.name) ?? SHAPE_NAMES[mould.shape]), wide: true },
          { label: 'How many', value: mould && typed('count', mould.count) },
        ],
        measureBoxes(mould),
        [
          { label: 'Base and walls', value: typed('length', slice.thickness), unit: 'mm' },
          { label: 'Lid', value: typed('length', slice.lidThickness), unit: 'mm' },
          { label: 'Overlap', value: typed('length', slice.overlap), unit: 'mm' },
          { label: 'Density', value: typed('density', slice.density), unit: 'g/mL' },
          { label: 'Spare', value: typed('fraction', slice.spare), unit: '%' },
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
    return value ? [{ label: `${label}, bare`, value }] : [];
  });
  if (boxes.length > 0) return boxes;
  return ['Length', 'Width', 'Depth'].map((label) => ({ label: `${label}, bare`, unit: 'mm' }));
}

function cutBlock(values: CrustValues): CardBlock {
  const { sheets, pastry, pastryTotalG, cavityMl } = values;
  return {
    title: 'Cut for each pie',
    rows: [
      [
        {
          label: sheets?.wall ? 'Base' : 'Base and walls, corners cut out',
          value: made(sheets && sheetText(sheets.base)),
          unit: 'mm',
          wide: true,
        },
        ...(sheets?.wall ? [{ label: 'Wall strip', value: made(sheetText(sheets.wall)), wide: true }] : []),
        { label: 'Lid', value: made(sheets && sheetText(sheets.lid)), unit: 'mm', wide: true },
        { label: 'Pastry for one', value: worked(pastry?.withSpareG ?? null, true), unit: 'g' },
        { label: 'Pastry for all', value: worked(pastryTotalG, true), unit: 'g' },
      ],
      [
        { label: 'Chimneys', value: made(chimneysText(values)) },
        { label: 'Where', value: made(placesText(values)), wide: true },
        {
          label: 'Room inside one',
          value: made(cavityMl === null ? null : `${fixedText(cavityMl, 0)} mL`),
          unit: 'mL',
        },
      ],
    ],
    place: 'Draw the sheet with its corners cut out, and the lid with its chimneys.',
  };
}

function pasteBlock(slice: CrustSlice, { paste, saltG }: CrustValues): CardBlock {
  const parts = Object.keys(PASTE_PART_NAMES) as (keyof PasteWeights)[];
  const name = PASTES.find(({ id }) => id === slice.pasteId)?.name ?? 'The kitchen’s own';
  return {
    title: 'Paste for all',
    rows: [
      [
        { label: 'Paste', value: name, wide: true },
        ...(slice.pasteId === null
          ? [{ label: 'Salt of it', value: typed('fraction', slice.salt), unit: '%' }]
          : []),
        { label: 'Salt it carries', value: worked(saltG, true), unit: 'g' },
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
    title: 'Lining inside, for each pie',
    rows: [
      [
        { label: 'Slice width', value: typed('length', slice.pieceWidth), unit: 'mm' },
        { label: 'Overlap', value: typed('length', slice.pieceOverlap), unit: 'mm' },
        { label: 'One slice', value: typed('mass', slice.pieceMass), unit: 'g' },
        { label: 'Salt in it', value: typed('fraction', slice.pieceSalt), unit: '%' },
      ],
      [
        { label: 'Slices', value: made(lining?.slices == null ? null : `${lining.slices}`) },
        { label: 'They weigh', value: worked(lining?.sliced?.massG ?? null, true), unit: 'g' },
        { label: 'They bring salt', value: worked(lining?.sliced?.saltG ?? null, true), unit: 'g' },
        { label: 'Or caul', value: made(caulText(values)), unit: 'g' },
      ],
    ],
  };
}

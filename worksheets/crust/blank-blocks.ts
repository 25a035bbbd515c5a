import * as say from '#words/crust/blank-blocks.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';

/** A crust to write on by hand, and to draw. */
export const BLANK_CRUST: readonly CardBlock[] = [
  {
    title: say.pieAndPastry,
    rows: [
      [
        { label: say.product, wide: true },
        { label: say.kitchen, wide: true },
        { label: say.mould, wide: true },
        { label: say.howMany },
      ],
      [
        { label: say.lengthBare, unit: 'mm' },
        { label: say.widthBare, unit: 'mm' },
        { label: say.depthBare, unit: 'mm' },
        { label: say.baseAndWalls, unit: 'mm' },
        { label: say.lid, unit: 'mm' },
        { label: say.overlap, unit: 'mm' },
      ],
    ],
  },
  {
    title: say.cutForEachPie,
    rows: [
      [
        { label: say.baseAndWalls, unit: 'mm', wide: true },
        { label: say.lid, unit: 'mm', wide: true },
        { label: say.pastryForAll, unit: 'g' },
      ],
      [{ label: say.chimneys }, { label: say.where, wide: true }],
    ],
    place: say.drawSheetCornersCutOutLid,
  },
  {
    title: say.paste,
    table: {
      columns: [say.flourG, say.fatG, say.eggG, say.waterG, say.saltG, say.vinegarG],
      rows: [],
      blankRows: 2,
    },
  },
  {
    title: say.liningInside,
    rows: [
      [
        { label: say.sliceWidth, unit: 'mm' },
        { label: say.overlap, unit: 'mm' },
        { label: say.oneSlice, unit: 'g' },
        { label: say.saltInIt, unit: '%' },
        { label: say.slicesForEach },
        { label: say.caulForEach, unit: 'g' },
      ],
    ],
  },
];

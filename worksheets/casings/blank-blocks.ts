import * as say from '#words/casings/blank-blocks.ts';
import type { CardBlock, CardBox } from '../parts/card-blocks.tsx';

/** What is soaked, when and in what. */
export function soakPlan(boxes: readonly CardBox[]): CardBlock {
  return {
    title: say.soakList,
    rows: [
      boxes,
      [
        { label: say.intoTheWaterAt, unit: say.clock },
        { label: say.water, unit: '°C' },
        { label: say.flushedAt, unit: say.clock },
        { label: say.by },
      ],
    ],
  };
}

/** Casings and links to write on by hand. */
export const BLANK_CASINGS: readonly CardBlock[] = [
  {
    title: say.whatIsFilledIntoWhat,
    rows: [
      [
        { label: say.product, wide: true },
        { label: say.kitchen, wide: true },
        { label: say.toFill, unit: 'kg' },
      ],
      [
        { label: say.casing, wide: true },
        { label: say.widthOnceStuffed, unit: 'mm' },
        { label: say.density, unit: 'g/mL' },
        { label: say.howFull, unit: '%' },
        { label: say.spare, unit: '%' },
      ],
      [
        { label: say.lotOfTheCasing },
        { label: say.oneMetreHolds, unit: 'g' },
        { label: say.oneStrand, unit: 'm' },
        { label: say.oneBundle, unit: 'm' },
      ],
    ],
  },
  soakPlan([
    { label: say.filled, unit: 'm' },
    { label: say.toSoakSpareInIt, unit: 'm' },
    { label: say.thatIs, unit: say.strands, wide: true },
  ]),
  {
    title: say.links,
    rows: [
      [
        { label: say.weightOfOne, unit: 'g' },
        { label: say.lengthOfOne, unit: 'mm' },
        { label: say.howMany },
        { label: say.leftOver, unit: 'g' },
      ],
    ],
  },
  {
    title: say.linksAsWeighed,
    rows: [[{ label: say.onAverage, unit: 'g', wide: true }, { label: say.scale }, { label: say.weighedBy }]],
    table: { columns: ['1, 6 …', '2, 7 …', '3, 8 …', '4, 9 …', '5, 10 …'], rows: [], blankRows: 2 },
  },
];

import type { CardBlock, CardBox } from '../parts/card-blocks.tsx';

/** What is soaked, when and in what. */
export function soakPlan(boxes: readonly CardBox[]): CardBlock {
  return {
    title: 'Soak list',
    rows: [
      boxes,
      [
        { label: 'Into the water at', unit: 'clock' },
        { label: 'Water', unit: '°C' },
        { label: 'Flushed at', unit: 'clock' },
        { label: 'By' },
      ],
    ],
  };
}

/** Casings and links to write on by hand. */
export const BLANK_CASINGS: readonly CardBlock[] = [
  {
    title: 'What is filled, into what',
    rows: [
      [
        { label: 'Product', wide: true },
        { label: 'Kitchen', wide: true },
        { label: 'To fill', unit: 'kg' },
      ],
      [
        { label: 'Casing', wide: true },
        { label: 'Width once stuffed', unit: 'mm' },
        { label: 'Density', unit: 'g/mL' },
        { label: 'How full', unit: '%' },
        { label: 'Spare', unit: '%' },
      ],
      [
        { label: 'Lot of the casing' },
        { label: 'One metre holds', unit: 'g' },
        { label: 'One strand', unit: 'm' },
        { label: 'One bundle', unit: 'm' },
      ],
    ],
  },
  soakPlan([
    { label: 'Filled', unit: 'm' },
    { label: 'To soak, spare in it', unit: 'm' },
    { label: 'That is', unit: 'strands', wide: true },
  ]),
  {
    title: 'Links',
    rows: [
      [
        { label: 'Weight of one', unit: 'g' },
        { label: 'Length of one', unit: 'mm' },
        { label: 'How many' },
        { label: 'Left over', unit: 'g' },
      ],
    ],
  },
  {
    title: 'Links as weighed',
    rows: [[{ label: 'On average', unit: 'g', wide: true }, { label: 'Scale' }, { label: 'Weighed by' }]],
    table: { columns: ['1, 6 …', '2, 7 …', '3, 8 …', '4, 9 …', '5, 10 …'], rows: [], blankRows: 2 },
  },
];

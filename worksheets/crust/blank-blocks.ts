import type { CardBlock } from '../parts/card-blocks.tsx';

/** A crust to write on by hand, and to draw. */
export const BLANK_CRUST: readonly CardBlock[] = [
  {
    title: 'Pie and pastry',
    rows: [
      [
        { label: 'Product', wide: true },
        { label: 'Kitchen', wide: true },
        { label: 'Mould', wide: true },
        { label: 'How many' },
      ],
      [
        { label: 'Length, bare', unit: 'mm' },
        { label: 'Width, bare', unit: 'mm' },
        { label: 'Depth, bare', unit: 'mm' },
        { label: 'Base and walls', unit: 'mm' },
        { label: 'Lid', unit: 'mm' },
        { label: 'Overlap', unit: 'mm' },
      ],
    ],
  },
  {
    title: 'Cut for each pie',
    rows: [
      [
        { label: 'Base and walls', unit: 'mm', wide: true },
        { label: 'Lid', unit: 'mm', wide: true },
        { label: 'Pastry for all', unit: 'g' },
      ],
      [{ label: 'Chimneys' }, { label: 'Where', wide: true }],
    ],
    place: 'Draw the sheet with its corners cut out, and the lid with its chimneys.',
  },
  {
    title: 'Paste',
    table: {
      columns: ['Flour g', 'Fat g', 'Egg g', 'Water g', 'Salt g', 'Vinegar g'],
      rows: [],
      blankRows: 2,
    },
  },
  {
    title: 'Lining inside',
    rows: [
      [
        { label: 'Slice width', unit: 'mm' },
        { label: 'Overlap', unit: 'mm' },
        { label: 'One slice', unit: 'g' },
        { label: 'Salt in it', unit: '%' },
        { label: 'Slices for each' },
        { label: 'Caul for each', unit: 'g' },
      ],
    ],
  },
];

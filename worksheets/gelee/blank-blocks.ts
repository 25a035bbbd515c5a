import type { CardBlock } from '../parts/card-blocks.tsx';

/** Proof that it sets, before it goes anywhere. */
export const PLATE_TEST: CardBlock = {
  title: 'Plate test: a spoonful on a cold plate, at the temperature it is served at',
  table: {
    columns: ['Time', 'Plate °C', 'Minutes', 'Runs, holds, cuts clean', 'Gelatine or stock added g', 'By'],
    rows: [],
    blankRows: 3,
  },
};

/** Jelly poured round or into something cooked. */
export const POURS: CardBlock = {
  title: 'Pouring: core at 40 °C (104 °F) or below, jelly at 25 to 30 °C (77 to 86 °F)',
  rows: [
    [
      { label: 'Room inside the crusts', unit: 'mL' },
      { label: 'Jelly for it', unit: 'mL' },
      { label: 'Jelly when poured', unit: '°C' },
      { label: 'Core when poured', unit: '°C' },
    ],
  ],
  table: {
    columns: ['Go', 'Time', 'Jelly °C', 'Core before °C', 'Core after °C', 'mL', 'By'],
    rows: [],
    blankRows: 3,
  },
  lines: [
    'The cooling clock does not stop for warm jelly. Heat the jelly right through first, then cool it.',
  ],
};

/** A jelly to write on by hand. */
export const BLANK_JELLY: readonly CardBlock[] = [
  {
    title: 'What is set',
    rows: [
      [
        { label: 'Product', wide: true },
        { label: 'Kitchen', wide: true },
        { label: 'Liquid', unit: 'mL' },
      ],
      [
        { label: 'For', wide: true },
        { label: 'Set with' },
        { label: 'Strength, g to 100 mL', unit: '%' },
        { label: 'Told for bloom' },
      ],
    ],
  },
  {
    title: 'Gelatine at hand',
    rows: [
      [
        { label: 'Form or grade', wide: true },
        { label: 'Bloom' },
        { label: 'One sheet', unit: 'g' },
        { label: 'Made of' },
        { label: 'Rule between blooms', wide: true },
      ],
    ],
  },
  {
    title: 'What changes the set',
    rows: [
      [
        { label: 'Stock sets by itself', unit: '%' },
        { label: 'pH' },
        { label: 'Alcohol, by volume', unit: '%' },
        { label: 'Sugar', unit: '%' },
        { label: 'Raw fruit in it', wide: true },
      ],
    ],
  },
  {
    title: 'To weigh',
    rows: [
      [
        { label: 'By the square root', unit: 'g' },
        { label: 'By the linear rule', unit: 'g' },
        { label: 'To weigh', unit: 'g' },
        { label: 'In sheets' },
      ],
      [
        { label: 'Soak in water', unit: 'g' },
        { label: 'Weighed', unit: 'g' },
        { label: 'Lot' },
        { label: 'By' },
      ],
    ],
  },
  PLATE_TEST,
  POURS,
];

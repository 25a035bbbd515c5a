import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { LabelComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: 'The food',
    rows: [
      [
        { label: 'Name of the food', broad: true },
        { label: 'Maker and place', wide: true },
      ],
      [
        { label: 'Sold in' },
        { label: 'Eaten by', wide: true },
        { label: 'Filled', unit: 'g' },
        { label: 'Finished', unit: 'g' },
      ],
    ],
  },
  {
    title: 'Ingredients, most first; ALLERGENS in capitals',
    table: { columns: ['Goes in', 'g', 'Made of', 'Allergens', 'Share %'], rows: [], blankRows: 12 },
  },
  {
    title: 'Nutrition, as declared',
    table: { columns: ['Nutrient', '100 g', 'Serving', '% DV'], rows: [], blankRows: 9 },
  },
  {
    title: 'Keeping',
    rows: [
      [
        { label: 'Pack', wide: true },
        { label: 'Keep at or below', unit: '°C' },
        { label: 'Cooked', unit: 'date' },
        { label: 'Life', unit: 'days' },
        { label: 'USE BY', unit: 'date' },
      ],
      [
        { label: 'Net weight', unit: 'g' },
        { label: 'Warnings', broad: true },
      ],
      [{ label: 'Label checked against the packs by', wide: true }],
    ],
  },
];

/** The label proof, filled or to write on. */
export function LabelCard(props: { computed: LabelComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  return (
    <PrintCard
      title="Label proof"
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={computed?.stops ?? []}
      standing={standing}
      noRules="Arithmetic for labels by Regulation (EU) No 1169/2011 and 21 CFR 101.9; not legal advice, check the current text"
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { SeasoningComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: 'Into what, and on which scale',
    rows: [
      [
        { label: 'Product', wide: true },
        { label: 'Kitchen', wide: true },
        { label: 'Total mix', unit: 'kg' },
        { label: 'Scale step', unit: 'g' },
      ],
    ],
  },
  {
    title: 'Jar',
    rows: [
      [
        { label: 'Blend', wide: true },
        { label: 'Dose', unit: 'g/kg of total mix' },
        { label: 'Into this batch', unit: 'g' },
        { label: 'Ground on', unit: 'date' },
      ],
      [
        { label: 'Mixed for batches' },
        { label: 'Stock in all', unit: 'g' },
        { label: 'Mixed by' },
        { label: 'Mixed on', unit: 'date' },
      ],
    ],
    table: {
      columns: ['Spice', 'Form', 'Parts', 'g/kg', 'Weigh g', 'Scale reads', 'Lot'],
      rows: [],
      blankRows: 14,
    },
  },
  {
    title: 'By themselves',
    table: {
      columns: ['Seasoning', 'Form', 'Dose g/kg', 'Weigh g', 'Scale reads', 'Lot'],
      rows: [],
      blankRows: 5,
    },
  },
  {
    title: 'Salt and allergens',
    rows: [
      [
        { label: 'Salt it brings', unit: 'g' },
        { label: 'Allergens, from the packs', broad: true },
      ],
    ],
  },
];

/** The label for the jar, filled or to write on. */
export function JarCard(props: { computed: SeasoningComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  return (
    <PrintCard
      title="Seasoning by parts"
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[]}
      standing={standing}
      noRules="Ceilings of taste: common practice, no source; no rule set"
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

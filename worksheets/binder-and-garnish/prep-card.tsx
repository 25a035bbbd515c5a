import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { BinderComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: 'For what',
    rows: [
      [
        { label: 'Product', wide: true },
        { label: 'Meat', unit: 'g' },
        { label: 'Mould inside, wide', unit: 'mm' },
        { label: 'Slice, thick', unit: 'mm' },
      ],
    ],
  },
  {
    title: 'Panade',
    rows: [
      [
        { label: 'Kind', wide: true },
        { label: 'Wanted, of the meat', unit: '%' },
        { label: 'Cooked, weighed', unit: 'g' },
      ],
      [
        { label: 'On a thin tray, into the cold at', unit: 'clock' },
        { label: 'Cold (4 °C, 39 °F or below) by', unit: 'clock' },
        { label: 'At mixing', unit: '°C' },
      ],
    ],
    table: { columns: ['Part', 'Weigh g', 'Scale reads g', 'Lot'], rows: [], blankRows: 4 },
  },
  {
    title: 'Egg, cream, other binders',
    table: { columns: ['Binder', 'Weigh g', 'Scale reads g', 'Lot'], rows: [], blankRows: 4 },
  },
  {
    title: 'Garnish',
    table: {
      columns: ['What', 'Bought g', 'Ready g', 'Piece mm', 'Cold by', 'Reads g', 'Lot'],
      rows: [],
      blankRows: 6,
    },
  },
  { title: 'What they bring', rows: [[{ label: 'Allergens, from the packs', broad: true }]] },
];

/** The list for preparing, filled or to write on. */
export function PrepCard(props: { computed: BinderComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  return (
    <PrintCard
      title="Binder, panade and garnish"
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={computed?.stops ?? []}
      standing={standing}
      noRules="Shares and sizes: common practice, no source; limits on binders by 9 CFR 319 where they apply"
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { ChillBudgetComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: 'What goes in',
    table: {
      columns: ['What', 'Weight kg', 'Fat %', 'Wanted at °C', 'Goes in', 'Reads °C', 'Clock'],
      rows: [],
      blankRows: 6,
    },
  },
  {
    title: 'STOP LINE: above 7 °C (44 °F) stop, chill meat and machine, then go on',
    heavy: true,
    table: {
      columns: ['Step', 'Warms by °C', 'Should read °C', 'Reads °C', 'Clock', 'Initials'],
      rows: [],
      blankRows: 7,
    },
  },
  {
    title: 'The end, ice, and time',
    rows: [
      [
        { label: 'Warmest it may end', unit: '°C' },
        { label: 'It ended at', unit: '°C' },
        { label: 'Ice at', unit: '°C' },
        { label: 'Water allowed as ice', unit: 'g' },
        { label: 'Ice added', unit: 'g' },
      ],
      [
        { label: 'Room', unit: '°C' },
        { label: 'Cubes', unit: 'mm' },
        { label: 'Freezer', unit: '°C' },
        { label: 'Into the freezer at', unit: 'clock' },
        { label: 'Firm and out at', unit: 'clock' },
      ],
    ],
  },
];

/** The card by the grinder, filled or to write on. */
export function TempCard(props: { computed: ChillBudgetComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  return (
    <PrintCard
      title="Grind and mix: keep it cold"
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[]}
      standing={standing}
      noRules="Temperatures for the bind: common practice, no source; no rule set"
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { BLANK_HEAD } from '../parts/blank-head.ts';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { later } from '../parts/later.tsx';
import { PrintCard } from '../parts/print-card.tsx';

const FilledCard = later(() => import('./filled-card.tsx').then((m) => m.FilledCard));

const BLANK: readonly CardBlock[] = [
  {
    title: 'The plan',
    rows: [
      [
        { label: 'Product', wide: true },
        { label: 'Mould', wide: true },
        { label: 'Filled deep', unit: 'mm' },
        { label: 'Of' },
        { label: 'Wall', unit: 'mm' },
        { label: 'Over its top' },
      ],
      [
        { label: 'Mix: water', unit: '%' },
        { label: 'protein', unit: '%' },
        { label: 'fat', unit: '%' },
        { label: 'Goes in at', unit: '°C' },
        { label: 'Core to reach', unit: '°C' },
        { label: 'Kept in heat', unit: 'min' },
      ],
      [
        { label: 'Cooked in', wide: true },
        { label: 'At', unit: '°C' },
        { label: 'Air' },
        { label: 'Water', unit: 'kg' },
        { label: 'in at', unit: '°C' },
        { label: 'Pan covered?' },
        { label: 'Height', unit: 'm' },
      ],
      [
        { label: 'Moulds in it' },
        { label: 'Pan: long, wide, deep', unit: 'mm', wide: true },
        { label: 'Water up to', unit: 'mm' },
        { label: 'Rest', unit: 'min' },
        { label: 'Room', unit: '°C' },
        { label: 'Press', unit: 'min' },
        { label: 'in air of', unit: '°C' },
      ],
      [
        { label: 'Oven record', wide: true },
        { label: 'Gives heat ×' },
        { label: 'Heats pan ×' },
        { label: 'Hotter by', unit: '°C' },
        { label: 'Limit', wide: true },
        { label: 'Coldest spot, over the base', unit: 'mm', wide: true },
      ],
    ],
    table: {
      columns: ['Chill', 'At °C', 'For min', 'Until core reads °C', 'Moulds', 'Tops'],
      rows: [],
      blankRows: 3,
    },
  },
  {
    title: 'WHAT HAPPENS. A plan is no proof: the probe rules',
    table: {
      columns: ['What', 'Planned', 'Clock', 'Core read °C'],
      rows: [
        ['Into the heat', null, null, null],
        ['Core at its target', null, null, null],
        ['Out of the heat', null, null, null],
        ['Peak of the core', null, null, null],
        ['First limit of the cooling rule', null, null, null],
        ['Second limit of the cooling rule', null, null, null],
        ['End of the chill', null, null, null],
      ],
    },
  },
];

/** The card at the oven, filled with the plan or to write on. */
export function PlanCard({ paper, standing }: { paper: Paper; standing: string }) {
  return (
    <FilledCard
      paper={paper}
      standing={standing}
      meanwhile={
        <PrintCard title="Cook plan" head={BLANK_HEAD} paper={paper} stops={[]} standing={standing}>
          <CardBlocks blocks={BLANK} />
        </PrintCard>
      }
    />
  );
}

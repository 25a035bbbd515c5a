import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { BLANK_HEAD } from '../parts/blank-head.ts';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import type { ThermometerComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: 'Where the check is made',
    rows: [
      [
        { label: 'Kitchen', wide: true },
        { label: 'Height', unit: 'm' },
        { label: 'Pressure here', unit: 'hPa' },
        { label: 'Water boils at', unit: '°C' },
      ],
      [
        { label: 'May be off, ±', unit: '°C' },
        { label: 'A check is good for', unit: 'days' },
        { label: 'Limit', unit: '°C', wide: true },
      ],
    ],
  },
  {
    title: 'Each thermometer',
    table: {
      columns: [
        'Name',
        'In ice',
        'In boil',
        'Step',
        'Error ±',
        'Off at the limit',
        'MUST SHOW',
        'Day, by',
        'Due',
      ],
      rows: [],
      blankRows: 8,
    },
    lines: [
      'Must show: limit, plus what it shows too much there, plus its error, rounded up to a step of the display.',
      'A thermometer that fails is taken out of use, never used with a correction in the head. What was cooked since its last good check is on hold.',
    ],
  },
];

interface CheckCardProps {
  computed: ThermometerComputed | null;
  paper: Paper;
  standing: string;
}

/** The record of the check, filled or to write on. */
export function CheckCard({ computed, paper, standing }: CheckCardProps) {
  return (
    <PrintCard
      title="Thermometer check"
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={computed?.stops ?? []}
      standing={standing}
      noRules="Tolerance and term: common practice, no source; no rule set"
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

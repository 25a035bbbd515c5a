import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { BLANK_HEAD, type CardHead } from '../parts/blank-head.ts';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import { approvedPlanWords } from '../words/approved-plan.ts';
import type { LotValues } from './lot-values.ts';

type Lot = Partial<LotValues>;

/** Blocks of a card for one lot; without values a form for the pencil. */
function lotBlocks(head: CardHead, lot: Lot): CardBlock[] {
  const { trichina } = lot;
  return [
    {
      title: 'Lot and plan',
      rows: [
        [
          { label: 'Product', value: head.product, wide: true },
          { label: 'Kitchen', value: head.kitchen, wide: true },
          { label: 'What is dried', value: lot.kind, wide: true },
          { label: 'ACCEPTED PLAN, name or number', value: lot.plan, broad: true },
        ],
        [
          { label: 'Salt at the start', value: lot.startSalt, unit: '%' },
          { label: 'Moisture at the start', value: lot.startMoisture, unit: '%' },
          { label: 'Protein at the start', value: lot.startProtein, unit: '%' },
        ],
      ],
    },
    {
      title: 'Fermentation, to pH 5.3',
      rows: [
        [
          { label: 'Degree-hour rule', value: lot.rule, wide: true },
          { label: 'Counted so far', value: lot.degreeHours, wide: true },
          { label: 'pH 5.3 reached', value: lot.reached },
          { label: 'pH', value: lot.ph },
        ],
      ],
      table: {
        columns: ['Chamber', 'For', 'From, to (clock)', 'pH', 'Initials'],
        rows: (lot.steps ?? []).map(([temp, hours]) => [temp, hours, null, null, null]),
        blankRows: Math.max(1, 4 - (lot.steps?.length ?? 0)),
      },
    },
    {
      title: 'Weight',
      rows: [
        [
          { label: 'At the start', value: lot.start, unit: 'g' },
          { label: 'Loss wanted', value: lot.lossTarget, unit: '%' },
          { label: 'Weight there', value: lot.targetMass, unit: 'g' },
          { label: 'Now', value: lot.now, unit: 'g' },
          { label: 'Lost so far', value: lot.lost, unit: '%' },
        ],
      ],
      table: {
        columns: ['Date', 'Weight g', 'Room °C', 'Damp %', 'Looks', 'Initials'],
        rows: [],
        blankRows: 6,
      },
      lines: lot.estimates ?? [],
    },
    {
      title: 'By the laboratory',
      rows: [
        [
          { label: 'Water activity', value: lot.waterActivity },
          { label: 'Moisture', value: lot.moisture, unit: '%' },
          { label: 'Protein', value: lot.protein, unit: '%' },
          { label: 'Sample taken', unit: 'date' },
          { label: 'Report no.' },
        ],
      ],
      verdicts: lot.verdicts ?? [],
    },
    {
      title: 'Drying room against Trichinella, 9 CFR 318.10(c)(3)(i), method 6',
      rows: [
        [
          { label: 'Casing', value: trichina?.casing, unit: 'mm' },
          { label: 'Held before at', value: trichina?.holdTemp, unit: '°C' },
          { label: 'for', value: trichina?.holdHours, unit: 'h' },
          { label: 'All of the mix', value: trichina?.total, unit: 'g' },
          { label: 'Dry ingredients', value: trichina?.dryIngredients, unit: 'g' },
          { label: 'Salt in them', value: trichina?.salt, unit: 'g' },
          { label: 'Least days', value: lot.trichinaDays },
        ],
      ],
    },
    {
      title: 'Decision',
      rows: [
        [
          { label: 'Under the plan: release, hold, discard', wide: true },
          { label: 'By', wide: true },
          { label: 'Date' },
        ],
      ],
    },
  ];
}

interface LotCardProps {
  head?: CardHead;
  lot?: Lot;
  stops?: readonly string[];
  paper: Paper;
  standing: string;
}

/** Card of one lot in the drying room. The stop of an accepted plan is printed first, always. */
export function LotCard({ head = BLANK_HEAD, lot = {}, stops = [], paper, standing }: LotCardProps) {
  const plan = approvedPlanWords(lot.plan ? { plan: lot.plan } : {}).title;
  const lines = [plan, ...stops.filter((stop) => stop !== plan)];
  return (
    <PrintCard
      title="Ferment and dry"
      head={head}
      paper={paper}
      stops={lines}
      standing={standing}
      noRules="Rules: those of the accepted plan"
    >
      <CardBlocks blocks={lotBlocks(head, lot)} />
    </PrintCard>
  );
}

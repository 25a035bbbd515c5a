import type { Filled } from '../batch-sheet/sheet-model.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { BLANK_HEAD, type CardHead } from '../parts/blank-head.ts';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import { BRINE_PARTS } from '../words/brine-names.ts';
import type { VatField, VatValues } from './vat-values.ts';

const MOST_TURNS = 32;
const BLANK_TURNS = 16;
/** "03-14" of an ISO date: the year stands above. */
const monthDay = (iso: string) => iso.slice(5);

type Vat = Partial<VatValues>;

/** Blocks of a card for one vat; without values a form for the pencil. */
function vatBlocks(head: CardHead, vat: Vat): CardBlock[] {
  return [
    meat(head, vat),
    wanted(vat),
    curingSalt(vat),
    mixing(vat),
    theBrine(vat),
    injection(vat),
    waiting(vat),
  ];
}

const field = (vat: Vat, key: VatField): Filled | null => vat.fields?.[key] ?? null;

function meat(head: CardHead, vat: Vat): CardBlock {
  return {
    title: 'Meat',
    rows: [
      [
        { label: 'Product', value: head.product, wide: true },
        { label: 'Kitchen', value: head.kitchen, wide: true },
        { label: 'What it is', value: vat.product, wide: true },
        { label: 'How it is eaten', value: vat.finish, wide: true },
        { label: 'Named traditional cure', value: vat.traditional },
      ],
      [
        { label: 'Without skin', value: field(vat, 'skinOff'), unit: 'g' },
        { label: 'With its skin', value: field(vat, 'skinOn'), unit: 'g' },
        { label: 'Heaviest piece', value: field(vat, 'heaviest'), unit: 'g' },
        { label: 'Thickest place', value: field(vat, 'thickness'), unit: 'mm' },
        { label: 'Water in the meat', value: field(vat, 'meatWater'), unit: '%' },
      ],
    ],
  };
}

function wanted(vat: Vat): CardBlock {
  return {
    title: 'Wanted',
    rows: [
      [
        { label: 'Way of the brine', value: vat.method, wide: true },
        { label: 'Counting of the nitrite', value: vat.counting, wide: true },
        { label: 'Nitrite', value: field(vat, 'nitriteTarget'), unit: 'mg/kg' },
        { label: 'Strength, if timed', value: field(vat, 'strength'), unit: '%' },
      ],
      [
        { label: 'Salt', value: field(vat, 'saltTarget'), unit: '%' },
        { label: 'counted on', value: vat.saltBase, wide: true },
        { label: 'Sugar', value: field(vat, 'sugar'), unit: '%' },
        { label: 'Accelerator', value: field(vat, 'acceleratorTarget'), unit: 'mg/kg' },
        { label: 'its form', value: vat.acceleratorForm },
        { label: 'Phosphate', value: field(vat, 'phosphate'), unit: '%' },
      ],
    ],
  };
}

function curingSalt(vat: Vat): CardBlock {
  return {
    title: 'CURING SALT: weighed in grams, by two people',
    heavy: true,
    rows: [
      [
        { label: 'Name on the pack', value: vat.pack, wide: true },
        { label: 'Lot', value: vat.lot },
        { label: 'Nitrite on pack', value: vat.nitrite, unit: '%' },
        { label: 'Nitrate on pack', value: vat.nitrate, unit: '%' },
      ],
      [
        { label: 'Scale step', value: vat.scaleStep, unit: 'g' },
        { label: 'Weigh', value: vat.parts?.curingSalt.plan, unit: 'g' },
        { label: 'Scale reads', value: vat.parts?.curingSalt.actual, unit: 'g' },
      ],
      [
        { label: 'Weighed by', value: vat.weighedBy, wide: true },
        { label: 'Checked by (another person)', value: vat.checkedBy, wide: true },
      ],
    ],
    lines: vat.nitriteLines ?? [],
    verdicts: vat.verdicts ?? [],
  };
}

function mixing(vat: Vat): CardBlock {
  const row = (name: string, key: keyof VatValues['parts'] | null) => [
    name,
    key === null ? null : (vat.parts?.[key].plan ?? null),
    key === null ? null : (vat.parts?.[key].actual ?? null),
    null,
  ];
  return {
    title: 'Mix cold, in this order: phosphate will not dissolve in salt water, acid drives nitrite off',
    table: {
      columns: ['In', 'Weigh', 'Scale reads', 'Clear, initials'],
      rows: [
        row(`1 ${BRINE_PARTS['cold-water']}`, 'water'),
        row(`2 ${BRINE_PARTS.phosphate}`, 'phosphate'),
        row(`3 ${BRINE_PARTS.salt}`, 'salt'),
        row(`4 ${BRINE_PARTS.sugar}`, 'sugar'),
        row(`5 ${BRINE_PARTS['strained-spice']}`, null),
        row(`6 ${BRINE_PARTS['curing-salt']}`, 'curingSalt'),
        row(`7 ${BRINE_PARTS.accelerator}`, 'accelerator'),
      ],
    },
  };
}

function theBrine(vat: Vat): CardBlock {
  return {
    title: 'The brine',
    rows: [
      [
        { label: 'Mixed on', value: vat.mixedOn, unit: 'date' },
        { label: 'Fresh or used', value: vat.use },
        { label: 'Cold of the brine', value: field(vat, 'brineTemp'), unit: '°C' },
        { label: 'Hydrometer reads' },
        { label: 'at', unit: '°C' },
      ],
    ],
    lines: [vat.strength ?? '', vat.saltLine ?? ''].filter((line) => line !== ''),
  };
}

function injection(vat: Vat): CardBlock {
  return {
    title: 'Inject: a grid, to the weight; drain and weigh again',
    rows: [
      [
        { label: 'To inject', value: field(vat, 'injection'), unit: '% of meat' },
        { label: 'Brine for all', value: vat.inject, unit: 'g' },
        { label: 'Weigh to', value: vat.injectTo, unit: 'g' },
        { label: 'Stays in', value: field(vat, 'retained'), unit: '%' },
        { label: 'Drained, planned', value: vat.expected, unit: 'g' },
        { label: 'Drained', value: field(vat, 'afterInjection'), unit: 'g' },
      ],
    ],
    table: {
      columns: ['Piece', 'Before g', 'Weigh to g', 'Drained g', 'Needles counted', 'Initials'],
      rows: [],
      blankRows: 3,
    },
    place: 'Map of the needles: draw the piece, mark the grid, bones and seams.',
  };
}

function waiting(vat: Vat): CardBlock {
  const turns = vat.turnOn ?? [];
  return {
    title: 'In the brine: tick or sign each day it is turned',
    rows: [
      [
        { label: 'Into the brine', value: vat.startedOn, unit: 'date' },
        { label: 'Days planned', value: field(vat, 'days'), unit: 'd' },
        { label: 'Days, as guidance', value: vat.guidance },
        { label: 'Out from', value: vat.readyFrom, unit: 'date' },
        { label: 'Drained after', value: field(vat, 'afterBrine'), unit: 'g' },
        { label: 'Pick-up', value: field(vat, 'pickUp'), unit: '%' },
      ],
    ],
    ticks:
      turns.length > 0
        ? turns.slice(0, MOST_TURNS).map(monthDay)
        : Array.from({ length: BLANK_TURNS }, () => ''),
    lines: [
      ...(turns.length > MOST_TURNS ? [`Daily to ${turns.at(-1)}: go on on a second card.`] : []),
      ...(vat.times && vat.times.length > 0 ? [`${vat.times.join('. ')}.`] : []),
    ],
  };
}

interface VatCardProps {
  head?: CardHead;
  vat?: Vat;
  stops?: readonly string[];
  paper: Paper;
  standing: string;
}

/** Card that stands by one vat. */
export function VatCard({ head = BLANK_HEAD, vat = {}, stops = [], paper, standing }: VatCardProps) {
  return (
    <PrintCard title="Brine and injection" head={head} paper={paper} stops={stops} standing={standing}>
      <CardBlocks blocks={vatBlocks(head, vat)} />
    </PrintCard>
  );
}

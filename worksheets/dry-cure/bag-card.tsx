import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { BLANK_HEAD, type CardHead } from '../parts/blank-head.ts';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import type { BagValues } from './bag-values.ts';

/** Turns with a box of their own; a longer cure is ticked on a second card. */
const MOST_TURNS = 40;
const TURNS_IN_ROW = 8;
const BLANK_TURNS = 24;

/** "03-14" of an ISO date: the year stands above. */
const monthDay = (iso: string) => iso.slice(5);

/** A box a day, with a row of empty ones after the last: the cure may take longer. */
function turnBoxes(turns: readonly string[]): string[] {
  const dated = turns.slice(0, MOST_TURNS).map(monthDay);
  if (dated.length === 0) return Array.from({ length: BLANK_TURNS }, () => '');
  const length = Math.ceil(dated.length / TURNS_IN_ROW + 1) * TURNS_IN_ROW;
  return Array.from({ length }, (_, index) => dated[index] ?? '');
}

/** Blocks of a card for one bag; without values a form for the pencil. */
export function bagBlocks(head: CardHead, bag: Partial<BagValues>): CardBlock[] {
  const turns = bag.turnOn ?? [];
  return [
    {
      title: 'Piece',
      rows: [
        [
          { label: 'Product', value: head.product, wide: true },
          { label: 'Kitchen', value: head.kitchen, wide: true },
          { label: 'Piece', value: bag.piece, wide: true },
        ],
        [
          { label: 'What it is', value: bag.product, wide: true },
          { label: 'How it is eaten', value: bag.finish, wide: true },
          { label: 'Named traditional cure', value: bag.traditional },
          { label: 'Way of the cure', value: bag.method, wide: true },
        ],
        [
          { label: 'Without skin', value: bag.skinOff, unit: 'g' },
          { label: 'With its skin', value: bag.skinOn, unit: 'g' },
          { label: 'Thickest place', value: bag.thickness, unit: 'mm' },
          { label: 'Cold of the room', value: bag.chill, unit: '°C' },
          { label: 'Into the cure', value: bag.startedOn, unit: 'date' },
        ],
      ],
    },
    {
      title: 'CURING SALT: weighed in grams, by two people',
      heavy: true,
      rows: [
        [
          { label: 'Name on the pack', value: bag.pack, wide: true },
          { label: 'Lot', value: bag.lot },
          { label: 'Nitrite on pack', value: bag.nitrite, unit: '%' },
          { label: 'Nitrate on pack', value: bag.nitrate, unit: '%' },
        ],
        [
          { label: 'Nitrite wanted', value: bag.nitriteTarget, unit: 'mg/kg' },
          { label: 'Scale step', value: bag.scaleStep, unit: 'g' },
          { label: 'Weigh', value: bag.cure, unit: 'g' },
          { label: 'Scale reads', value: bag.cureActual, unit: 'g' },
        ],
        [
          { label: 'Weighed by', value: bag.weighedBy, wide: true },
          { label: 'Checked by (another person)', value: bag.checkedBy, wide: true },
        ],
      ],
      lines: bag.ppm ? [bag.ppm] : [],
      verdicts: bag.verdicts ?? [],
    },
    {
      title: 'Salt, sugar, spice',
      rows: [
        [
          { label: 'Salt wanted', value: bag.saltTarget, unit: '% of meat' },
          { label: 'Plain salt', value: bag.salt, unit: 'g' },
          { label: 'Scale reads', value: bag.saltActual, unit: 'g' },
          { label: 'All salt in the meat', value: bag.saltInMeat, unit: '%' },
        ],
        [
          { label: 'Sugar wanted', value: bag.sugarTarget, unit: '% of meat' },
          { label: 'Sugar', value: bag.sugar, unit: 'g' },
          { label: 'Scale reads', value: bag.sugarActual, unit: 'g' },
          { label: 'Spice', unit: 'g' },
        ],
      ],
    },
    {
      title: 'Days in the cure: guidance, a salt analysis decides',
      rows: [
        [
          { label: 'Days', value: bag.days },
          { label: 'Ready from', value: bag.readyFrom, unit: 'date' },
          { label: 'or as late as', value: bag.readyBy, unit: 'date' },
          { label: 'Out of the cure', unit: 'date' },
        ],
      ],
      lines: bag.times && bag.times.length > 0 ? [`${bag.times.join('. ')}.`] : [],
    },
    {
      title: 'Turned and looked at: tick or sign each day',
      ticks: turnBoxes(turns),
      lines: turns.length > MOST_TURNS ? [`Daily to ${turns.at(-1)}: go on on a second card.`] : [],
    },
    {
      title: 'Weights',
      rows: [
        [
          { label: 'Loss wanted', value: bag.lossTarget, unit: '%' },
          { label: 'Weight at that loss', value: bag.targetMass, unit: 'g' },
          { label: 'Now', value: bag.now, unit: 'g' },
          { label: 'Lost so far', value: bag.lost, unit: '%' },
        ],
      ],
      table: {
        columns: ['Date', 'Weight g', 'Room °C', 'Looks, smells', 'Initials'],
        rows: [],
        blankRows: 4,
      },
    },
  ];
}

interface BagCardProps {
  head?: CardHead;
  bag?: Partial<BagValues>;
  stops?: readonly string[];
  paper: Paper;
  standing: string;
}

/** Card that hangs on one bag. */
export function BagCard({ head = BLANK_HEAD, bag = {}, stops = [], paper, standing }: BagCardProps) {
  const name = bag.piece ? `Dry cure: ${bag.piece}` : 'Dry cure';
  return (
    <PrintCard title={name} head={head} paper={paper} stops={stops} standing={standing}>
      <CardBlocks blocks={bagBlocks(head, bag)} />
    </PrintCard>
  );
}

import * as say from '#words/dry-cure/bag-card.ts';
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
      title: say.piece,
      rows: [
        [
          { label: say.product, value: head.product, wide: true },
          { label: say.kitchen, value: head.kitchen, wide: true },
          { label: say.piece, value: bag.piece, wide: true },
        ],
        [
          { label: say.whatItIs, value: bag.product, wide: true },
          { label: say.howItIsEaten, value: bag.finish, wide: true },
          { label: say.namedTraditionalCure, value: bag.traditional },
          { label: say.wayOfTheCure, value: bag.method, wide: true },
        ],
        [
          { label: say.withoutSkin, value: bag.skinOff, unit: 'g' },
          { label: say.withItsSkin, value: bag.skinOn, unit: 'g' },
          { label: say.thickestPlace, value: bag.thickness, unit: 'mm' },
          { label: say.coldOfTheRoom, value: bag.chill, unit: '°C' },
          { label: say.intoTheCure, value: bag.startedOn, unit: say.date },
        ],
      ],
    },
    {
      title: say.curingSaltWeighedGramsTwo,
      heavy: true,
      rows: [
        [
          { label: say.nameOnThePack, value: bag.pack, wide: true },
          { label: say.lot, value: bag.lot },
          { label: say.nitriteOnPack, value: bag.nitrite, unit: '%' },
          { label: say.nitrateOnPack, value: bag.nitrate, unit: '%' },
        ],
        [
          { label: say.nitriteWanted, value: bag.nitriteTarget, unit: 'mg/kg' },
          { label: say.scaleStep, value: bag.scaleStep, unit: 'g' },
          { label: say.weigh, value: bag.cure, unit: 'g' },
          { label: say.scaleReads, value: bag.cureActual, unit: 'g' },
        ],
        [
          { label: say.weighedBy, value: bag.weighedBy, wide: true },
          { label: say.checkedByAnotherPerson, value: bag.checkedBy, wide: true },
        ],
      ],
      lines: bag.ppm ? [bag.ppm] : [],
      verdicts: bag.verdicts ?? [],
    },
    {
      title: say.saltSugarSpice,
      rows: [
        [
          { label: say.saltWanted, value: bag.saltTarget, unit: say.ofMeat },
          { label: say.plainSalt, value: bag.salt, unit: 'g' },
          { label: say.scaleReads, value: bag.saltActual, unit: 'g' },
          { label: say.allSaltInTheMeat, value: bag.saltInMeat, unit: '%' },
        ],
        [
          { label: say.sugarWanted, value: bag.sugarTarget, unit: say.ofMeat },
          { label: say.sugar, value: bag.sugar, unit: 'g' },
          { label: say.scaleReads, value: bag.sugarActual, unit: 'g' },
          { label: say.spice, unit: 'g' },
        ],
      ],
    },
    {
      title: say.daysCureGuidanceSaltAnalysis,
      rows: [
        [
          { label: say.days, value: bag.days },
          { label: say.readyFrom, value: bag.readyFrom, unit: say.date },
          { label: say.orAsLateAs, value: bag.readyBy, unit: say.date },
          { label: say.outOfTheCure, unit: say.date },
        ],
      ],
      lines: bag.times && bag.times.length > 0 ? [`${bag.times.join('. ')}.`] : [],
    },
    {
      title: say.turnedLookedTickSignEachDay,
      ticks: turnBoxes(turns),
      lines: turns.length > MOST_TURNS ? [say.dailyToGoOnOnA(turns.at(-1))] : [],
    },
    {
      title: say.weights,
      rows: [
        [
          { label: say.lossWanted, value: bag.lossTarget, unit: '%' },
          { label: say.weightAtThatLoss, value: bag.targetMass, unit: 'g' },
          { label: say.now, value: bag.now, unit: 'g' },
          { label: say.lostSoFar, value: bag.lost, unit: '%' },
        ],
      ],
      table: {
        columns: [say.date2, say.weightG, say.roomC, say.looksSmells, say.initials],
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
  const name = bag.piece ? say.dryCure(bag.piece) : say.dryCure2;
  return (
    <PrintCard title={name} head={head} paper={paper} stops={stops} standing={standing}>
      <CardBlocks blocks={bagBlocks(head, bag)} />
    </PrintCard>
  );
}

import * as say from '#words/brine/vat-card.ts';
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
    title: say.meat,
    rows: [
      [
        { label: say.product, value: head.product, wide: true },
        { label: say.kitchen, value: head.kitchen, wide: true },
        { label: say.whatItIs, value: vat.product, wide: true },
        { label: say.howItIsEaten, value: vat.finish, wide: true },
        { label: say.namedTraditionalCure, value: vat.traditional },
      ],
      [
        { label: say.withoutSkin, value: field(vat, 'skinOff'), unit: 'g' },
        { label: say.withItsSkin, value: field(vat, 'skinOn'), unit: 'g' },
        { label: say.heaviestPiece, value: field(vat, 'heaviest'), unit: 'g' },
        { label: say.thickestPlace, value: field(vat, 'thickness'), unit: 'mm' },
        { label: say.waterInTheMeat, value: field(vat, 'meatWater'), unit: '%' },
      ],
    ],
  };
}

function wanted(vat: Vat): CardBlock {
  return {
    title: say.wanted,
    rows: [
      [
        { label: say.wayOfTheBrine, value: vat.method, wide: true },
        { label: say.countingOfTheNitrite, value: vat.counting, wide: true },
        { label: say.nitrite, value: field(vat, 'nitriteTarget'), unit: 'mg/kg' },
        { label: say.strengthIfTimed, value: field(vat, 'strength'), unit: '%' },
      ],
      [
        { label: say.salt, value: field(vat, 'saltTarget'), unit: '%' },
        { label: say.countedOn, value: vat.saltBase, wide: true },
        { label: say.sugar, value: field(vat, 'sugar'), unit: '%' },
        { label: say.accelerator, value: field(vat, 'acceleratorTarget'), unit: 'mg/kg' },
        { label: say.itsForm, value: vat.acceleratorForm },
        { label: say.phosphate, value: field(vat, 'phosphate'), unit: '%' },
      ],
    ],
  };
}

function curingSalt(vat: Vat): CardBlock {
  return {
    title: say.curingSaltWeighedGramsTwo,
    heavy: true,
    rows: [
      [
        { label: say.nameOnThePack, value: vat.pack, wide: true },
        { label: say.lot, value: vat.lot },
        { label: say.nitriteOnPack, value: vat.nitrite, unit: '%' },
        { label: say.nitrateOnPack, value: vat.nitrate, unit: '%' },
      ],
      [
        { label: say.scaleStep, value: vat.scaleStep, unit: 'g' },
        { label: say.weigh, value: vat.parts?.curingSalt.plan, unit: 'g' },
        { label: say.scaleReads, value: vat.parts?.curingSalt.actual, unit: 'g' },
      ],
      [
        { label: say.weighedBy, value: vat.weighedBy, wide: true },
        { label: say.checkedByAnotherPerson, value: vat.checkedBy, wide: true },
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
    title: say.mixColdOrderPhosphateWillNot,
    table: {
      columns: [say.inWord, say.weigh, say.scaleReads, say.clearInitials],
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
    title: say.theBrine,
    rows: [
      [
        { label: say.mixedOn, value: vat.mixedOn, unit: say.date },
        { label: say.freshOrUsed, value: vat.use },
        { label: say.coldOfTheBrine, value: field(vat, 'brineTemp'), unit: '°C' },
        { label: say.hydrometerReads },
        { label: say.at, unit: '°C' },
      ],
    ],
    lines: [vat.strength ?? '', vat.saltLine ?? ''].filter((line) => line !== ''),
  };
}

function injection(vat: Vat): CardBlock {
  return {
    title: say.injectGridWeightDrainWeigh,
    rows: [
      [
        { label: say.toInject, value: field(vat, 'injection'), unit: say.ofMeat },
        { label: say.brineForAll, value: vat.inject, unit: 'g' },
        { label: say.weighTo, value: vat.injectTo, unit: 'g' },
        { label: say.staysIn, value: field(vat, 'retained'), unit: '%' },
        { label: say.drainedPlanned, value: vat.expected, unit: 'g' },
        { label: say.drained, value: field(vat, 'afterInjection'), unit: 'g' },
      ],
    ],
    table: {
      columns: [say.piece, say.beforeG, say.weighToG, say.drainedG, say.needlesCounted, say.initials],
      rows: [],
      blankRows: 3,
    },
    place: say.mapNeedlesDrawPieceMarkGrid,
  };
}

function waiting(vat: Vat): CardBlock {
  const turns = vat.turnOn ?? [];
  return {
    title: say.brineTickSignEachDayTurned,
    rows: [
      [
        { label: say.intoTheBrine, value: vat.startedOn, unit: say.date },
        { label: say.daysPlanned, value: field(vat, 'days'), unit: 'd' },
        { label: say.daysAsGuidance, value: vat.guidance },
        { label: say.outFrom, value: vat.readyFrom, unit: say.date },
        { label: say.drainedAfter, value: field(vat, 'afterBrine'), unit: 'g' },
        { label: say.pickUp, value: field(vat, 'pickUp'), unit: '%' },
      ],
    ],
    ticks:
      turns.length > 0
        ? turns.slice(0, MOST_TURNS).map(monthDay)
        : Array.from({ length: BLANK_TURNS }, () => ''),
    lines: [
      ...(turns.length > MOST_TURNS ? [say.dailyToGoOnOnA(turns.at(-1))] : []),
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
    <PrintCard title={say.brineAndInjection} head={head} paper={paper} stops={stops} standing={standing}>
      <CardBlocks blocks={vatBlocks(head, vat)} />
    </PrintCard>
  );
}

import * as say from '#words/drying/lot-card.ts';
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
      title: say.lotAndPlan,
      rows: [
        [
          { label: say.product, value: head.product, wide: true },
          { label: say.kitchen, value: head.kitchen, wide: true },
          { label: say.whatIsDried, value: lot.kind, wide: true },
          { label: say.acceptedPlanNameOrNumber, value: lot.plan, broad: true },
        ],
        [
          { label: say.saltAtTheStart, value: lot.startSalt, unit: '%' },
          { label: say.moistureAtTheStart, value: lot.startMoisture, unit: '%' },
          { label: say.proteinAtTheStart, value: lot.startProtein, unit: '%' },
        ],
      ],
    },
    {
      title: say.fermentationToPh53,
      rows: [
        [
          { label: say.degreeHourRule, value: lot.rule, wide: true },
          { label: say.countedSoFar, value: lot.degreeHours, wide: true },
          { label: say.ph53Reached, value: lot.reached },
          { label: 'pH', value: lot.ph },
        ],
      ],
      table: {
        columns: [say.chamber, say.forWord, say.fromToClock, 'pH', say.initials],
        rows: (lot.steps ?? []).map(([temp, hours]) => [temp, hours, null, null, null]),
        blankRows: Math.max(1, 4 - (lot.steps?.length ?? 0)),
      },
    },
    {
      title: say.weight,
      rows: [
        [
          { label: say.atTheStart, value: lot.start, unit: 'g' },
          { label: say.lossWanted, value: lot.lossTarget, unit: '%' },
          { label: say.weightThere, value: lot.targetMass, unit: 'g' },
          { label: say.now, value: lot.now, unit: 'g' },
          { label: say.lostSoFar, value: lot.lost, unit: '%' },
        ],
      ],
      table: {
        columns: [say.date, say.weightG, say.roomC, say.damp, say.looks, say.initials],
        rows: [],
        blankRows: 6,
      },
      lines: lot.estimates ?? [],
    },
    {
      title: say.byTheLaboratory,
      rows: [
        [
          { label: say.waterActivity, value: lot.waterActivity },
          { label: say.moisture, value: lot.moisture, unit: '%' },
          { label: say.protein, value: lot.protein, unit: '%' },
          { label: say.sampleTaken, unit: say.date2 },
          { label: say.reportNo },
        ],
      ],
      verdicts: lot.verdicts ?? [],
    },
    {
      title: say.dryingRoomAgainstTrichinella9,
      rows: [
        [
          { label: say.casing, value: trichina?.casing, unit: 'mm' },
          { label: say.heldBeforeAt, value: trichina?.holdTemp, unit: '°C' },
          { label: say.forWord2, value: trichina?.holdHours, unit: 'h' },
          { label: say.allOfTheMix, value: trichina?.total, unit: 'g' },
          { label: say.dryIngredients, value: trichina?.dryIngredients, unit: 'g' },
          { label: say.saltInThem, value: trichina?.salt, unit: 'g' },
          { label: say.leastDays, value: lot.trichinaDays },
        ],
      ],
    },
    {
      title: say.decision,
      rows: [
        [
          { label: say.underThePlanReleaseHoldDiscard, wide: true },
          { label: say.by, wide: true },
          { label: say.date },
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
      title={say.fermentAndDry}
      head={head}
      paper={paper}
      stops={lines}
      standing={standing}
      noRules={say.rulesThoseOfTheAcceptedPlan}
    >
      <CardBlocks blocks={lotBlocks(head, lot)} />
    </PrintCard>
  );
}

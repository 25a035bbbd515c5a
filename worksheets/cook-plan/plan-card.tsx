import * as say from '#words/cook-plan/plan-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { BLANK_HEAD } from '../parts/blank-head.ts';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { later } from '../parts/later.tsx';
import { PrintCard } from '../parts/print-card.tsx';

const FilledCard = later(() => import('./filled-card.tsx').then((m) => m.FilledCard));

const BLANK: readonly CardBlock[] = [
  {
    title: say.thePlan,
    rows: [
      [
        { label: say.product, wide: true },
        { label: say.mould, wide: true },
        { label: say.filledDeep, unit: 'mm' },
        { label: say.ofWord },
        { label: say.wall, unit: 'mm' },
        { label: say.overItsTop },
      ],
      [
        { label: say.mixWater, unit: '%' },
        { label: say.protein, unit: '%' },
        { label: say.fat, unit: '%' },
        { label: say.goesInAt, unit: '°C' },
        { label: say.coreToReach, unit: '°C' },
        { label: say.keptInHeat, unit: 'min' },
      ],
      [
        { label: say.cookedIn, wide: true },
        { label: say.at, unit: '°C' },
        { label: say.air },
        { label: say.water, unit: 'kg' },
        { label: say.inAt, unit: '°C' },
        { label: say.panCovered },
        { label: say.height, unit: 'm' },
      ],
      [
        { label: say.mouldsInIt },
        { label: say.panLongWideDeep, unit: 'mm', wide: true },
        { label: say.waterUpTo, unit: 'mm' },
        { label: say.rest, unit: 'min' },
        { label: say.room, unit: '°C' },
        { label: say.press, unit: 'min' },
        { label: say.inAirOf, unit: '°C' },
      ],
      [
        { label: say.ovenRecord, wide: true },
        { label: say.givesHeat },
        { label: say.heatsPan },
        { label: say.hotterBy, unit: '°C' },
        { label: say.limit, wide: true },
        { label: say.coldestSpotOverTheBase, unit: 'mm', wide: true },
      ],
    ],
    table: {
      columns: [say.chill, say.atC, say.forMin, say.untilCoreReadsC, say.moulds, say.tops],
      rows: [],
      blankRows: 3,
    },
  },
  {
    title: say.whatHappensPlanNoProofProbe,
    table: {
      columns: [say.what, say.planned, say.clock, say.coreReadC],
      rows: [
        [say.intoTheHeat, null, null, null],
        [say.coreAtItsTarget, null, null, null],
        [say.outOfTheHeat, null, null, null],
        [say.peakOfTheCore, null, null, null],
        [say.firstLimitOfTheCoolingRule, null, null, null],
        [say.secondLimitOfTheCoolingRule, null, null, null],
        [say.endOfTheChill, null, null, null],
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
        <PrintCard title={say.cookPlan} head={BLANK_HEAD} paper={paper} stops={[]} standing={standing}>
          <CardBlocks blocks={BLANK} />
        </PrintCard>
      }
    />
  );
}

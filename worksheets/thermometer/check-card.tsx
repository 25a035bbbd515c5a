import * as say from '#words/thermometer/check-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { BLANK_HEAD } from '../parts/blank-head.ts';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import type { ThermometerComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: say.whereTheCheckIsMade,
    rows: [
      [
        { label: say.kitchen, wide: true },
        { label: say.height, unit: 'm' },
        { label: say.pressureHere, unit: 'hPa' },
        { label: say.waterBoilsAt, unit: '°C' },
      ],
      [
        { label: say.mayBeOff, unit: '°C' },
        { label: say.aCheckIsGoodFor, unit: say.days },
        { label: say.limit, unit: '°C', wide: true },
      ],
    ],
  },
  {
    title: say.eachThermometer,
    table: {
      columns: [
        say.name,
        say.inIce,
        say.inBoil,
        say.step,
        say.error,
        say.offAtTheLimit,
        say.mustShow,
        say.dayBy,
        say.due,
      ],
      rows: [],
      blankRows: 8,
    },
    lines: [say.mustShowLimitPlusWhatShows, say.thermometerFailsTakenOutUse],
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
      title={say.thermometerCheck}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={computed?.stops ?? []}
      standing={standing}
      noRules={say.toleranceTermCommonPracticeNo}
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

import * as say from '#words/chill-budget/temp-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { useShared } from '../state/use-shared.ts';
import type { ChillBudgetComputed } from './compute.ts';
import { $tempering, temperLine } from './tempering.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: say.whatGoesIn,
    table: {
      columns: [say.what, say.weightKg, say.fat, say.wantedAtC, say.goesIn, say.readsC, say.clock],
      rows: [],
      blankRows: 6,
    },
  },
  {
    title: say.stopLineAbove7C44,
    heavy: true,
    table: {
      columns: [say.step, say.warmsByC, say.shouldReadC, say.readsC, say.clock, say.initials],
      rows: [],
      blankRows: 7,
    },
  },
  {
    title: say.theEndIceAndTime,
    rows: [
      [
        { label: say.warmestItMayEnd, unit: '°C' },
        { label: say.itEndedAt, unit: '°C' },
        { label: say.iceAt, unit: '°C' },
        { label: say.waterAllowedAsIce, unit: 'g' },
        { label: say.iceAdded, unit: 'g' },
      ],
      [
        { label: say.room, unit: '°C' },
        { label: say.cubes, unit: 'mm' },
        { label: say.freezer, unit: '°C' },
        { label: say.intoTheFreezerAt, unit: say.clock2 },
        { label: say.firmAndOutAt, unit: say.clock2 },
      ],
    ],
  },
];

/** The card by the grinder, filled or to write on. */
export function TempCard(props: { computed: ChillBudgetComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  const run = useShared($tempering);
  const reckoned = computed && temperLine(run, computed);
  return (
    <PrintCard
      title={say.grindAndMixKeepItCold}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[]}
      standing={standing}
      noRules={say.temperaturesBindCommonPractice}
    >
      <CardBlocks blocks={computed ? withLine(computed.blocks, reckoned) : BLANK} />
    </PrintCard>
  );
}

/** The blocks with one more line under the last. */
function withLine(blocks: readonly CardBlock[], line: string | null): readonly CardBlock[] {
  const last = blocks.at(-1);
  if (line === null || last === undefined) return blocks;
  return [...blocks.slice(0, -1), { ...last, lines: [...(last.lines ?? []), line] }];
}

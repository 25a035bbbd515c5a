import * as say from '#words/binder-and-garnish/prep-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { BinderComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: say.forWhat,
    rows: [
      [
        { label: say.product, wide: true },
        { label: say.meat, unit: 'g' },
        { label: say.mouldInsideWide, unit: 'mm' },
        { label: say.sliceThick, unit: 'mm' },
      ],
    ],
  },
  {
    title: say.panade,
    rows: [
      [
        { label: say.kind, wide: true },
        { label: say.wantedOfTheMeat, unit: '%' },
        { label: say.cookedWeighed, unit: 'g' },
      ],
      [
        { label: say.onAThinTrayIntoThe, unit: say.clock },
        { label: say.cold4C39FOr, unit: say.clock },
        { label: say.atMixing, unit: '°C' },
      ],
    ],
    table: { columns: [say.part, say.weighG, say.scaleReadsG, say.lot], rows: [], blankRows: 4 },
  },
  {
    title: say.eggCreamOtherBinders,
    table: { columns: [say.binder, say.weighG, say.scaleReadsG, say.lot], rows: [], blankRows: 4 },
  },
  {
    title: say.garnish,
    table: {
      columns: [say.what, say.boughtG, say.readyG, say.pieceMm, say.coldBy, say.readsG, say.lot],
      rows: [],
      blankRows: 6,
    },
  },
  { title: say.whatTheyBring, rows: [[{ label: say.allergensFromThePacks, broad: true }]] },
];

/** The list for preparing, filled or to write on. */
export function PrepCard(props: { computed: BinderComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  return (
    <PrintCard
      title={say.binderPanadeAndGarnish}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={computed?.stops ?? []}
      standing={standing}
      noRules={say.sharesSizesCommonPracticeNo}
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

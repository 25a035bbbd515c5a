import * as say from '#words/seasoning/jar-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { SeasoningComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: say.intoWhatAndOnWhichScale,
    rows: [
      [
        { label: say.product, wide: true },
        { label: say.kitchen, wide: true },
        { label: say.totalMix, unit: 'kg' },
        { label: say.scaleStep, unit: 'g' },
      ],
    ],
  },
  {
    title: say.jar,
    rows: [
      [
        { label: say.blend, wide: true },
        { label: say.dose, unit: say.gKgOfTotalMix },
        { label: say.intoThisBatch, unit: 'g' },
        { label: say.groundOn, unit: say.date },
      ],
      [
        { label: say.mixedForBatches },
        { label: say.stockInAll, unit: 'g' },
        { label: say.mixedBy },
        { label: say.mixedOn, unit: say.date },
      ],
    ],
    table: {
      columns: [say.spice, say.form, say.parts, 'g/kg', say.weighG, say.scaleReads, say.lot],
      rows: [],
      blankRows: 14,
    },
  },
  {
    title: say.byThemselves,
    table: {
      columns: [say.seasoning, say.form, say.doseGKg, say.weighG, say.scaleReads, say.lot],
      rows: [],
      blankRows: 5,
    },
  },
  {
    title: say.saltAndAllergens,
    rows: [
      [
        { label: say.saltItBrings, unit: 'g' },
        { label: say.allergensFromThePacks, broad: true },
      ],
    ],
  },
];

/** The label for the jar, filled or to write on. */
export function JarCard(props: { computed: SeasoningComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  return (
    <PrintCard
      title={say.seasoningByParts}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={[]}
      standing={standing}
      noRules={say.ceilingsTasteCommonPracticeNo}
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

import * as say from '#words/label/label-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { type CardBlock, CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import type { LabelComputed } from './compute.ts';

const BLANK: readonly CardBlock[] = [
  {
    title: say.theFood,
    rows: [
      [
        { label: say.nameOfTheFood, broad: true },
        { label: say.makerAndPlace, wide: true },
      ],
      [
        { label: say.soldIn },
        { label: say.eatenBy, wide: true },
        { label: say.filled, unit: 'g' },
        { label: say.finished, unit: 'g' },
      ],
    ],
  },
  {
    title: say.ingredientsMostFirstAllergens,
    table: { columns: [say.goesIn, 'g', say.madeOf, say.allergens, say.share], rows: [], blankRows: 12 },
  },
  {
    title: say.nutritionAsDeclared,
    table: { columns: [say.nutrient, '100 g', say.serving, say.dv], rows: [], blankRows: 9 },
  },
  {
    title: say.keeping,
    rows: [
      [
        { label: say.pack, wide: true },
        { label: say.keepAtOrBelow, unit: '°C' },
        { label: say.cooked, unit: say.date },
        { label: say.life, unit: say.days },
        { label: say.useBy, unit: say.date },
      ],
      [
        { label: say.netWeight, unit: 'g' },
        { label: say.warnings, broad: true },
      ],
      [{ label: say.labelCheckedAgainstThePacksBy, wide: true }],
    ],
  },
];

/** The label proof, filled or to write on. */
export function LabelCard(props: { computed: LabelComputed | null; paper: Paper; standing: string }) {
  const { computed, paper, standing } = props;
  return (
    <PrintCard
      title={say.labelProof}
      head={computed?.head ?? BLANK_HEAD}
      paper={paper}
      stops={computed?.stops ?? []}
      standing={standing}
      noRules={say.arithmeticLabelsRegulationEuNo}
    >
      <CardBlocks blocks={computed?.blocks ?? BLANK} />
    </PrintCard>
  );
}

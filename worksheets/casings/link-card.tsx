import * as say from '#words/casings/link-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { CouldNot } from '../parts/computed.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import { useShared } from '../state/use-shared.ts';
import { BLANK_CASINGS } from './blank-blocks.ts';
import { $casings } from './computed.ts';

/** The card of casings and links; an empty one while there is no batch. */
export function LinkCard({ paper, standing }: { paper: Paper; standing: string }) {
  const computed = useShared($casings);
  if (computed.state === 'failed') return <CouldNot detail={computed.detail} />;
  const { head, blocks, stops } =
    computed.state === 'ready' ? computed.value : { head: BLANK_HEAD, blocks: BLANK_CASINGS, stops: [] };
  return (
    <PrintCard
      title={say.casingsAndLinks}
      head={head}
      paper={paper}
      stops={stops}
      standing={standing}
      noRules={say.sizesSpareCommonPracticeNo}
    >
      <CardBlocks blocks={blocks} />
    </PrintCard>
  );
}

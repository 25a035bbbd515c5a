import * as say from '#words/gelee/jelly-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { CouldNot } from '../parts/computed.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import { useShared } from '../state/use-shared.ts';
import { BLANK_JELLY } from './blank-blocks.ts';
import { $gelee } from './computed.ts';

/** The card of the jelly; an empty one while there is no batch. */
export function JellyCard({ paper, standing }: { paper: Paper; standing: string }) {
  const computed = useShared($gelee);
  if (computed.state === 'failed') return <CouldNot detail={computed.detail} />;
  const { head, blocks, stops } =
    computed.state === 'ready' ? computed.value : { head: BLANK_HEAD, blocks: BLANK_JELLY, stops: [] };
  return (
    <PrintCard
      title={say.jellyStrength}
      head={head}
      paper={paper}
      stops={stops}
      standing={standing}
      noRules={say.strengthsUseCommonPracticeNo}
    >
      <CardBlocks blocks={blocks} />
    </PrintCard>
  );
}

import * as say from '#words/crust/crust-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { CardBlocks } from '../parts/card-blocks.tsx';
import { BLANK_HEAD } from '../parts/card-head.ts';
import { CouldNot } from '../parts/computed.tsx';
import { PrintCard } from '../parts/print-card.tsx';
import { useShared } from '../state/use-shared.ts';
import { BLANK_CRUST } from './blank-blocks.ts';
import { $crust } from './computed.ts';

/** The card of the crust; an empty one while there is no batch. */
export function CrustCard({ paper, standing }: { paper: Paper; standing: string }) {
  const computed = useShared($crust);
  if (computed.state === 'failed') return <CouldNot detail={computed.detail} />;
  const { head, blocks, stops } =
    computed.state === 'ready' ? computed.value : { head: BLANK_HEAD, blocks: BLANK_CRUST, stops: [] };
  return (
    <PrintCard
      title={say.pastryCrust}
      head={head}
      paper={paper}
      stops={stops}
      standing={standing}
      noRules={say.sheetsPasteCommonPracticeNo}
    >
      <CardBlocks blocks={blocks} />
    </PrintCard>
  );
}
